import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tableCsv } from './csv.ts';

const columns = [
  { head: 'joint', kind: 'text' },
  { head: 'torque [N·m]', kind: 'number' },
] as const;

test('any text and number come back through another reader, formulas disarmed by an apostrophe', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.string({ unit: 'grapheme' }), fc.double({ noNaN: true, noDefaultInfinity: true })), { minLength: 1 }),
      (rows) => {
        const [, ...read] = parse(tableCsv({ name: 'x', columns, rows }), { bom: true, record_delimiter: '\r\n' }) as string[][];
        expect(read).toEqual(rows.map(([text, number]) => [/^[=+\-@\t\r]/.test(text) ? `'${text}` : text, String(number)]));
      },
    ),
  );
});

test('lines end as RFC 4180 has them, and there is one for each row and the headings', () => {
  const text = tableCsv({
    name: 'x',
    columns,
    rows: [
      ['a,b', 1],
      ['line\nend', -2.5],
    ],
  });
  expect(text).toBe('\ufeffjoint,torque [N·m]\r\n"a,b",1\r\n"line\nend",-2.5\r\n');
});
