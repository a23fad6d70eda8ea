import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync, zipSync } from 'fflate';
import type { Notice } from '../packages/core/src/index.ts';
import { readModel } from '../packages/papers/src/ifc/index.ts';
import { readJob, readTests } from '../packages/papers/src/read/index.ts';
import { bytesSource, hashOf, verifyHandover } from '../packages/record/src/index.ts';
import { TEST_JOB } from '../packages/record/src/test-book.ts';
import { handoverBytes, testBook, testSource } from '../packages/record/src/test-handover.ts';
import { openExport, openImport } from '../packages/server/src/index.ts';
import { openStore, type Store } from '../packages/store/src/index.ts';
import { mutated } from './mutate.ts';
import type { Random } from './random.ts';

/** A reader to be fuzzed: makes an input of a random state, reads it, and gives what was said. */
interface Fuzzed {
  readonly next: (random: Random) => Promise<readonly Notice[]>;
  readonly close?: () => Promise<void>;
}

const bytesOf = (text: string) => new TextEncoder().encode(text);
const NUMBERS = [
  '0',
  '-1',
  '1e999',
  '1,234',
  '1.234.567',
  '99999999999999999999',
  'NaN',
  '١٢',
  '\u0000',
  '\u202e',
  '"',
  '=1+1',
  '\r\n',
  'ÿ',
];
const demo = (): Map<string, Uint8Array> =>
  new Map(
    readdirSync('demo', { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => [
        join(entry.parentPath, entry.name).slice('demo/'.length),
        new Uint8Array(readFileSync(join(entry.parentPath, entry.name))),
      ]),
  );
const read = (files: ReadonlyMap<string, Uint8Array>) => readJob((path) => files.get(path) ?? 'missing').notices;

const csv = async (): Promise<Fuzzed> => {
  const files = demo();
  const tables = [...files.keys()].filter((name) => name.endsWith('.csv'));
  const words = [...NUMBERS, ';', '\t', ',,,,', 'joint,', 'durchmesser', 'M20', '[in]', '[kN]', '10.9', '2x4', 'ring', '1-99999', '#N/A'];
  return {
    next: async (random) => {
      const name = random.one(tables);
      return read(new Map([...files, [name, mutated(files.get(name)!, words, random)]]));
    },
  };
};

const xlsx = async (): Promise<Fuzzed> => {
  const files = demo();
  const books = ['list-de.xlsx', 'list-en.xlsx'].map((name) => new Uint8Array(readFileSync(`packages/papers/fixtures/workbooks/${name}`)));
  const words = [
    ...NUMBERS,
    '<!DOCTYPE a [<!ENTITY b "c">]>',
    '&b;',
    '<row r="5">',
    '<c r="ZZZ9" t="s">',
    '<v>999999</v>',
    '</c>',
    '<f>',
    '<t>',
    '<mergeCell ref="A1:A1048576"/>',
    '<![CDATA[',
    'hidden="1"',
    'date1904="1"',
    't="b"',
  ];
  const job = bytesOf(`${strFromU8(files.get('job.yaml')!).replace(/^joints:.*$/m, '')}\njoints: list.xlsx\n`);
  return {
    next: async (random) => {
      const book = random.one(books);
      if (random.chance(0.4)) return read(new Map([...files, ['job.yaml', job], ['list.xlsx', mutated(book, words, random)]]));
      const parts = unzipSync(book);
      const name = random.one(Object.keys(parts));
      parts[name] = Uint8Array.from(mutated(parts[name]!, words, random));
      return read(new Map([...files, ['job.yaml', job], ['list.xlsx', zipSync(parts, { level: 1 })]]));
    },
  };
};

const yaml = async (): Promise<Fuzzed> => {
  const files = demo();
  const names = [...files.keys()].filter((name) => name.endsWith('.yaml'));
  const words = [
    ...NUMBERS,
    '&a',
    '*a',
    '? ',
    ': ',
    '- ',
    '{',
    '[',
    '!!binary ',
    '<<: *a',
    '---\n',
    '|',
    '>',
    '%YAML',
    '~',
    '  '.repeat(400),
    '[['.repeat(500),
  ];
  return {
    next: async (random) => {
      const name = random.one(names);
      const changed = new Map([...files, [name, mutated(files.get(name)!, words, random)]]);
      return [...read(changed), ...readTests((path) => changed.get(path) ?? 'missing', 'tests.yaml').notices];
    },
  };
};

const ifc = async (): Promise<Fuzzed> => {
  const models = ['splice-ifc4-mm', 'flange-ifc2x3-inch', 'asked-ifc4x3-m'].map(
    (name) => new Uint8Array(readFileSync(`packages/papers/fixtures/ifc/${name}.ifc`)),
  );
  // the parser is loaded once; that is no time of an input
  await readModel(models[0]!, 'a.ifc');
  const words = [
    ...NUMBERS,
    '#1',
    '#999999',
    '$',
    '*',
    '()',
    '((((',
    "'",
    '\\X2\\00FC\\X0\\',
    '.MILLI.',
    '.BOLT.',
    'IFCLOCALPLACEMENT(',
    'IFCREAL(1.)',
    '/*',
    ';',
    'ENDSEC;',
    'END-ISO-10303-21;',
  ];
  return {
    next: async (random) => {
      const found = await readModel(mutated(random.one(models), words, random), 'a.ifc');
      return found.ok ? found.value.notices : found.notices;
    },
  };
};

const handover = async (): Promise<Fuzzed> => {
  const book = testBook(1);
  const file = await handoverBytes(testSource({ ...book, heads: book.heads.slice(-3) }));
  const words = [...NUMBERS, 'clampwright-handover 1\n', 'entries 0 ', 'seal 10 ', '{"job":', '9007199254740993', '\n\n'];
  return {
    next: async (random) => {
      const result = await verifyHandover(bytesSource(mutated(file, words, random)), {});
      return result.ok ? [] : [result.fault.reason];
    },
  };
};

const openJson = async (): Promise<Fuzzed> => {
  const book = testBook(1);
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-fuzz-'));
  const source = await openStore({ folder: join(folder, 'source') });
  await source.append(TEST_JOB, book.entries, book.heads);
  const files = new Map<string, Uint8Array>();
  for await (const { path, bytes } of openExport(source, TEST_JOB)) files.set(path, bytes);
  await source.close();
  let stores = 0;
  const fresh = () => {
    stores += 1;
    return openStore({ folder: join(folder, `into-${stores}`) });
  };
  let store: Store = await fresh();
  const words = [...NUMBERS, '{', '}', '[', 'null', '"size":0', '"root":""', '../../../etc/passwd', '"files":{}', '"books":[]', '\\u0000'];
  return {
    next: async (random) => {
      const name = random.one([...files.keys()]);
      const changed = new Map([...files, [name, mutated(files.get(name)!, words, random)]]);
      if (name !== 'about.json' && random.chance(0.7)) {
        const about = JSON.parse(strFromU8(files.get('about.json')!)) as { files: Record<string, string> };
        about.files[name] = hashOf(changed.get(name)!);
        changed.set('about.json', bytesOf(JSON.stringify(about)));
      }
      const taken = await openImport(store, async (path) => changed.get(path));
      if ((await store.books()).length > 0) {
        await store.close();
        store = await fresh();
      }
      return taken.ok ? [] : taken.notices;
    },
    close: async () => {
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
};

/** Every reader of what others made; a new one is a line here. */
export const FUZZED = { csv, xlsx, yaml, ifc, handover, 'open export': openJson } as const;
export type FuzzedName = keyof typeof FUZZED;
