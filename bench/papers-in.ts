import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { streamXlsxRows, writeXlsx } from 'hucre/xlsx';
import { readModel } from '../packages/papers/src/ifc/index.ts';
import { openWorkbook } from '../packages/papers/src/read/workbook/workbook.ts';

const ROWS = 100_000;
const HEAD = [
  'joint',
  'rule set',
  'layout',
  'bolts',
  'bolt circle [mm]',
  'size',
  'grade',
  'system',
  'clamped thickness [mm]',
  'lot',
  'reaction point',
  'bolt 1',
  'direction',
  'seen from',
];
const row = (i: number) => [
  `J${i + 1}`,
  'en1090-torque',
  'ring',
  8,
  4000 + (i % 7) * 50,
  'M20',
  '10.9',
  'HV',
  60 + (i % 9) * 5,
  `LOT-${i % 3}`,
  'flange edge',
  'door',
  'clockwise',
  'inside',
];

const bytesOf = (text: string) => new TextEncoder().encode(text);
const resident = () => process.resourceUsage().maxRSS / 1024;

interface Once {
  readonly ms: number;
  readonly joints: number;
  readonly notices: number;
  readonly mebibytes: number;
}

/** Reads a list in a process of its own: its memory is what that process took at most, the runtime in it. */
const readOnce = (path: string) =>
  JSON.parse(
    execFileSync(process.execPath, ['--import', 'tsx', 'bench/paper-in-once.ts', path], { encoding: 'utf8' }).trim().split('\n').at(-1)!,
  ) as Once;

/** A list of 100 000 joints as CSV, sound and with broken rows, and as XLSX, each in a process of its own; and a model of 50 MB with 5 000 bolts. */
export async function papersInBench(): Promise<void> {
  console.log(`\npapers in (targets: ${ROWS} rows in under 10 s and 500 MiB; 50 MB of IFC with 5 000 bolts in under 15 s)`);
  const rows = Array.from({ length: ROWS }, (_, i) => row(i));
  const lines = [HEAD, ...rows].map((cells) => cells.join(','));
  const torn = lines.map((line, i) => (i > 0 && i % 7000 === 0 ? line.replace('ring', 'ri"ng"') : line));
  const xlsx = await writeXlsx({ sheets: [{ name: 'Joints', rows: [HEAD, ...rows] }] });
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-bench-'));
  try {
    for (const [name, bytes] of [
      ['list.csv', bytesOf(`${lines.join('\n')}\n`)],
      ['torn.csv', bytesOf(`${torn.join('\n')}\n`)],
      ['list.xlsx', xlsx],
    ] as const) {
      writeFileSync(join(folder, name), bytes);
      const { ms, joints, notices, mebibytes } = readOnce(join(folder, name));
      console.log(
        `  ${name.padEnd(9)}  ${(ms / 1000).toFixed(1)} s  ${mebibytes.toFixed(0)} MiB resident at most  ${joints} joints, ${notices} notices`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
  const own = performance.now();
  const book = openWorkbook(xlsx, 'list.xlsx');
  if (book.ok) book.value[0]!.read();
  const ours = performance.now() - own;
  const start = performance.now();
  let read = 0;
  for await (const one of streamXlsxRows(xlsx)) read += one.values.length;
  const theirs = performance.now() - start;
  console.log(
    `  the sheet alone: ${(ours / 1000).toFixed(1)} s; hucre, streaming ${read} cells: ${(theirs / 1000).toFixed(1)} s; ratio ${(ours / theirs).toFixed(2)}`,
  );
  const model = bytesOf(modelText(5000, 50 * 1024 * 1024));
  const began = performance.now();
  const found = await readModel(model, 'bench.ifc');
  const bolts = found.ok ? found.value.joints.reduce((sum, joint) => sum + joint.bolts.length, 0) : 0;
  console.log(
    `  IFC of ${(model.length / 1e6).toFixed(0)} MB: ${bolts} bolts in ${((performance.now() - began) / 1000).toFixed(1)} s, ${resident().toFixed(0)} MiB at most so far`,
  );
}

/** Bolts of joints of ten, padded with points to the size wanted. */
function modelText(bolts: number, size: number): string {
  const lines = [
    "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION((''),'2;1');\nFILE_NAME('b','2026-11-02T08:00:00',(''),(''),'','','');\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;",
    "#1=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);\n#2=IFCUNITASSIGNMENT((#1));\n#3=IFCPROJECT('0',$,$,$,$,$,$,$,#2);",
  ];
  let id = 10;
  let length = 0;
  const add = (text: string) => {
    lines.push(text);
    length += text.length + 1;
  };
  for (let i = 0; i < bolts; i += 1) {
    const joint = Math.floor(i / 10);
    add(`#${id}=IFCCARTESIANPOINT((${(i % 5) * 70}.,${Math.floor((i % 10) / 5) * 70}.,${joint * 2000}.));`);
    add(`#${id + 1}=IFCAXIS2PLACEMENT3D(#${id},$,$);\n#${id + 2}=IFCLOCALPLACEMENT($,#${id + 1});`);
    add(`#${id + 3}=IFCMECHANICALFASTENER('g${i}',$,'M20x80 10.9',$,$,#${id + 2},$,$,20.,80.,.BOLT.);`);
    id += 4;
  }
  for (; length < size; id += 1) add(`#${id}=IFCCARTESIANPOINT((${id % 1000}.25,${id % 777}.5,${id % 333}.75));`);
  return `${lines.join('\n')}\nENDSEC;\nEND-ISO-10303-21;\n`;
}
