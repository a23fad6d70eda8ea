import { stringify } from 'csv-stringify/sync';
import type { SheetTable, SheetValue } from './sheet-table.ts';

/** A text that a spreadsheet would take for a formula when it opens the file. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * A table as CSV by RFC 4180: comma, CRLF, quotes where need be; UTF-8 with its mark, which spreadsheets need to read `N·m`. Numbers with
 * a point. A text that begins like a formula gets an apostrophe before it, so that opening the file computes nothing; numbers, which may
 * be negative, are left alone.
 *
 * @example
 * expect(tableCsv({ name: 'x', columns: [{ head: 'joint', kind: 'text' }, { head: 'angle [°]', kind: 'number' }], rows: [['=A1', -3], ['a "b"', undefined]] })).toBe(
 *   '\ufeffjoint,angle [°]\r\n\'=A1,-3\r\n"a ""b""",\r\n');
 */
export const tableCsv = ({ columns, rows }: SheetTable): string =>
  `\ufeff${stringify([columns.map(({ head }) => head), ...rows.map((row) => row.map(safe))], {
    record_delimiter: '\r\n',
    // a line end of any kind stands in quotes, not only the one that ends a row
    quoted_match: /[\r\n]/,
  })}`;

const safe = (value: SheetValue) => (typeof value === 'string' && FORMULA.test(value) ? `'${value}` : value);
