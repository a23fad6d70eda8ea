import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as core from '../packages/core/src/index.ts';
import { tableCsv } from '../packages/papers/src/sheet-out/csv.ts';
import { breakLines } from '../packages/papers/src/typeset/break-lines.ts';
import * as record from '../packages/record/src/index.ts';

const known = { ...core, ...record, breakLines, tableCsv };

/** The `@example` blocks of a file, each with the name of the thing it documents. */
function examplesIn(file: string): { readonly symbol: string; readonly code: string }[] {
  const source = readFileSync(file, 'utf8');
  return [
    ...source.matchAll(
      /\/\*\*((?:(?!\*\/)[\s\S])*?@example(?:(?!\*\/)[\s\S])*)\*\/\s*export (?:const|function|async function|class) (\w+)/g,
    ),
  ].map(([, comment, symbol]) => ({
    symbol: symbol!,
    code: comment!
      .slice(comment!.indexOf('@example') + '@example'.length)
      .split('\n')
      .map((line) => line.replace(/^\s*\* ?/, ''))
      .join('\n'),
  }));
}

const files = ['core/src', 'record/src', 'papers/src/typeset', 'papers/src/sheet-out'].flatMap((name) =>
  (readdirSync(`packages/${name}`, { recursive: true }) as string[])
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'))
    .map((file) => `packages/${name}/${file}`),
);

for (const file of files) {
  for (const { symbol, code } of examplesIn(file)) {
    test(`the example of ${symbol} runs as printed`, () => {
      expect(code).toContain('expect(');
      new Function('expect', ...Object.keys(known), code)(expect, ...Object.values(known));
    });
  }
}
