import { levelOf, type Notice } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';
import { type Cell, type CellStyle, type WriteSheet, writeXlsx } from 'hucre/xlsx';
import type { OpenFile } from '../read/open-file.ts';
import { columnLetter, type Row } from '../read/row.ts';
import { rowsOf } from '../read/rows-of.ts';

/** Both can be told apart in black and white as well: a fault is hatched. */
const FAULT: CellStyle = { fill: { type: 'pattern', pattern: 'lightUp', fgColor: { rgb: 'C0392B' }, bgColor: { rgb: 'FBD5D0' } } };
const REMARK: CellStyle = { fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb: 'FFF2CC' } } };
const NOTE: CellStyle = { alignment: { wrapText: true, vertical: 'top' } };
const HEAD: CellStyle = { font: { bold: true } };
const AUTHOR = 'clampwright';
/** Widths are in characters. */
const LIST_WIDTHS = [18, 44, 60, 60] as const;
const CELL_WIDTH = 14;
const SAID_WIDTH = 70;
/** On paper a sheet is as wide as a page that lies on its side. */
const ON_PAPER = { paperSize: 'a4', orientation: 'landscape', fitToPage: true, fitToWidth: 1, fitToHeight: 0 } as const;

/** Points that a row needs so that what is said in it is read whole: programs do not all find that out themselves. */
const LINE = 15;
const linesOf = (text: string, width: number) =>
  text.split('\n').reduce((sum, part) => sum + Math.max(1, Math.ceil(part.length / (0.9 * width))), 0);
const tall = (...cells: readonly (readonly [text: string, width: number])[]) => ({
  height: LINE * Math.max(...cells.map(([text, width]) => linesOf(text, width))),
});

/**
 * A workbook that shows every notice where it was found: a copy of each sheet or CSV file concerned, row for row, the cell filled, with
 * a comment and, in a last column that prints, in words. The first sheet lists them all. `undefined`: nothing is wrong.
 */
export async function markedCopy(
  open: OpenFile,
  notices: readonly Notice[],
  { units = 'metric', words = ENGLISH_WORDS }: { readonly units?: UnitSystem; readonly words?: Words } = {},
): Promise<Uint8Array | undefined> {
  if (notices.length === 0) return undefined;
  const names = new Set<string>();
  const sheets: WriteSheet[] = [];
  for (const found of byTable(notices).values()) {
    const { file, sheet } = found[0]!.place!;
    const rows = rowsOf(open, file!, sheet);
    if (rows.ok) sheets.push(copyOf(freeName(sheet ?? file!, names), rows.value, found, units, words));
  }
  return writeXlsx({ sheets: [listOf(freeName(words.label('faults.sheet'), names), notices, units, words), ...sheets] });
}

/** Notices by file and sheet, where a table was read. */
function byTable(notices: readonly Notice[]): ReadonlyMap<string, readonly Notice[]> {
  const tables = new Map<string, Notice[]>();
  for (const one of notices) {
    const { file, sheet, row } = one.place ?? {};
    if (file === undefined || row === undefined || /\.ya?ml$/i.test(file)) continue;
    const key = `${file}\n${sheet ?? ''}`;
    tables.set(key, [...(tables.get(key) ?? []), one]);
  }
  return tables;
}

function listOf(name: string, notices: readonly Notice[], units: UnitSystem, words: Words): WriteSheet {
  const { label, says, remedy, whereabouts } = words;
  const head = [label('faults.level'), label('faults.place'), label('faults.says'), label('faults.remedy')];
  const body = notices.map((one) => [label(`level.${levelOf(one.code)}`), whereabouts(one), says(one, units), remedy(one, units)]);
  return {
    name,
    rows: [head, ...body],
    columns: LIST_WIDTHS.map((width) => ({ width })),
    rowDefs: new Map(body.map((values, row) => [row + 1, tall(...values.map((value, column) => [value, LIST_WIDTHS[column]!] as const))])),
    freezePane: { rows: 1 },
    pageSetup: ON_PAPER,
    cells: new Map([
      ...head.map((value, column) => [`0,${column}`, cell(value, HEAD)] as const),
      ...body.flatMap((values, row) => values.map((value, column) => [`${row + 1},${column}`, cell(value, NOTE)] as const)),
    ]),
  };
}

function copyOf(name: string, given: readonly Row[], notices: readonly Notice[], units: UnitSystem, { says, remedy }: Words): WriteSheet {
  const width = given.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const rows: (string | number)[][] = [];
  for (const { row, cells, exact } of given) {
    while (rows.length < row - 1) rows.push([]);
    rows[row - 1] = cells.map((text, column) => cellValue(text, exact?.includes(column) === true));
  }
  const cells = new Map<string, Partial<Cell>>();
  const said = new Map<number, string[]>();
  for (const one of notices) {
    const { row, letter } = one.place!;
    const at = row! - 1;
    while (rows.length <= at) rows.push([]);
    const text = `${says(one, units)} ${remedy(one, units)}`;
    const column = columnAt(letter);
    said.set(at, [...(said.get(at) ?? []), column === undefined ? text : `${letter}: ${text}`]);
    if (column === undefined) continue;
    const key = `${at},${column}`;
    const before = cells.get(key)?.comment?.text;
    const style = levelOf(one.code) === 'attention' && before === undefined ? REMARK : FAULT;
    cells.set(key, {
      ...cell(rows[at]?.[column] ?? '', style),
      comment: { author: AUTHOR, text: before === undefined ? text : `${before}\n${text}` },
    });
  }
  for (const [at, texts] of said) {
    const row = rows[at]!;
    while (row.length < width) row.push('');
    row[width] = texts.join('\n');
    cells.set(`${at},${width}`, cell(texts.join('\n'), NOTE));
  }
  return {
    name,
    rows,
    cells,
    columns: [...Array.from({ length: width }, () => ({ width: CELL_WIDTH })), { width: SAID_WIDTH }],
    rowDefs: new Map([...said].map(([at, texts]) => [at, tall([texts.join('\n'), SAID_WIDTH])])),
    pageSetup: ON_PAPER,
  };
}

const cell = (value: string | number, style: CellStyle): Partial<Cell> => ({
  value,
  type: typeof value === 'number' ? 'number' : 'string',
  style,
});

/** A number stays a number; text stays text, also where it looks like a number of thousands or begins like a formula. */
function cellValue(text: string, exact: boolean): string | number {
  if (text === '' || String(Number(text)) !== text) return text;
  return exact || !/\.\d{3}$/.test(text) ? Number(text) : text;
}

function columnAt(letter: string | undefined): number | undefined {
  if (letter === undefined) return undefined;
  const column = [...letter].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) - 1;
  return columnLetter(column) === letter ? column : undefined;
}

/** A sheet's name: 31 characters, none of `[]:*?/\`, once in the workbook. Source: ISO/IEC 29500-1, 18.2.19, and the programs' own rules. */
function freeName(wanted: string, taken: Set<string>): string {
  const bare = wanted.replace(/[[\]:*?/\\]/g, '-').slice(0, 31) || '-';
  for (let i = 1; ; i += 1) {
    const name = i === 1 ? bare : `${bare.slice(0, 27)} (${i})`;
    if (taken.has(name.toLowerCase())) continue;
    taken.add(name.toLowerCase());
    return name;
  }
}
