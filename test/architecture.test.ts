import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { NOTICES } from '../packages/core/src/index.ts';
import { EN_NOTICES } from '../packages/words/src/en/index.ts';

/** Arrows only downwards. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  core: [],
  words: ['core'],
  record: ['core'],
  sync: ['core', 'record'],
  papers: ['core', 'words', 'record'],
  store: ['core', 'record'],
  reference: ['core'],
  server: ['core', 'words', 'papers', 'record', 'sync', 'store'],
  cli: ['core', 'words', 'papers', 'reference', 'record', 'sync', 'store', 'server'],
  web: ['core', 'words', 'papers', 'record', 'sync'],
};

const sources = (name: string) =>
  (readdirSync(`packages/${name}/src`, { recursive: true }) as string[])
    .filter((file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$/.test(file))
    .map((file) => ({ file: `packages/${name}/src/${file}`, text: readFileSync(`packages/${name}/src/${file}`, 'utf8') }));

const imports = (text: string) => [...text.matchAll(/(?:from|import\()\s*['"]([^'"]+)['"]/g)].map(([, specifier]) => specifier!);

describe.each(Object.entries(MAY_IMPORT))('%s', (name, below) => {
  const found = sources(name).flatMap(({ file, text }) => imports(text).map((specifier) => ({ file, specifier })));
  test(`imports only ${below.join(', ') || 'itself'} of the house`, () => {
    const upwards = found.filter(({ specifier }) => {
      const other = /^@clampwright\/([a-z]+)/.exec(specifier)?.[1];
      return other !== undefined && !below.includes(other);
    });
    expect(upwards).toEqual([]);
  });
  test('declares what it imports of the house and no more', () => {
    const manifest = JSON.parse(readFileSync(`packages/${name}/package.json`, 'utf8')) as { dependencies?: Record<string, string> };
    const declared = Object.keys(manifest.dependencies ?? {}).filter((one) => one.startsWith('@clampwright/'));
    expect(declared.filter((one) => !below.includes(one.slice('@clampwright/'.length)))).toEqual([]);
  });
});

test('core knows no library but special functions, and neither Node nor the browser', () => {
  const foreign = sources('core').flatMap(({ file, text }) =>
    imports(text)
      .filter((specifier) => !specifier.startsWith('.') && !specifier.startsWith('@stdlib/'))
      .map((specifier) => `${file}: ${specifier}`),
  );
  expect(foreign).toEqual([]);
  expect(
    sources('words')
      .flatMap(({ text }) => imports(text))
      .filter((one) => one.startsWith('node:')),
  ).toEqual([]);
});

test('the verifier of handover files knows nothing of the code that writes them', () => {
  const reached = new Set<string>();
  const follow = (file: string) => {
    if (reached.has(file)) return;
    reached.add(file);
    for (const specifier of imports(readFileSync(file, 'utf8')).filter((one) => one.startsWith('.')))
      follow(join(dirname(file), specifier));
  };
  follow('packages/record/src/handover/verify.ts');
  expect([...reached].filter((file) => /write|\/fold\/fold|kinds\//.test(file))).toEqual([]);
  expect(reached.size).toBeGreaterThan(10);
});

test('every notice has its text, and every text its notice', () => {
  expect(Object.keys(EN_NOTICES).sort()).toEqual(Object.keys(NOTICES).sort());
});
