import { CsvError, parse } from 'csv-parse/sync';
import type { Row } from './row.ts';

/** A row whose quotation marks do not fit, as it stood there. */
interface BrokenRow {
  readonly row: number;
  readonly problem: string;
  readonly line: string;
}

interface Parsed {
  readonly record: string[];
  readonly info: { readonly lines: number; readonly records: number; readonly empty_lines: number };
}

/** A file with more broken rows than this is no table. */
const MOST_BROKEN = 20;

/**
 * Hands out the records of a CSV text with `\n` line ends, one after the other. A row whose quotation marks do not fit is set aside and
 * given back, and reading goes on in the line below it. `undefined`: so many are broken that nothing can be relied on.
 */
export function csvRows(text: string, delimiter: string, visit: (row: Row) => void): readonly BrokenRow[] | undefined {
  const broken: BrokenRow[] = [];
  let rest = text;
  let above = 0;
  while (rest !== '') {
    let ended = { rows: 0, lines: 0 };
    const keep = ({ record, info }: Parsed) => {
      ended = { rows: info.records + info.empty_lines, lines: info.lines };
      visit({ row: above + ended.rows, cells: record });
      return null;
    };
    const problem = problemIn(rest, delimiter, keep);
    if (problem === undefined) break;
    let at = afterLines(rest, ended.lines);
    let row = above + ended.rows + 1;
    while (rest[at] === '\n') {
      at += 1;
      row += 1;
    }
    const end = rest.indexOf('\n', at);
    broken.push({ row, problem, line: rest.slice(at, end === -1 ? undefined : end) });
    if (broken.length > MOST_BROKEN) return undefined;
    rest = end === -1 ? '' : rest.slice(end + 1);
    above = row;
  }
  return broken;
}

function problemIn(text: string, delimiter: string, keep: (parsed: Parsed) => null): string | undefined {
  try {
    parse(text, {
      bom: true,
      delimiter,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      info: true,
      on_record: (parsed: unknown) => keep(parsed as Parsed),
    });
    return undefined;
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return PROBLEMS[error.code] ?? error.code;
  }
}

function afterLines(text: string, lines: number): number {
  let at = 0;
  for (let line = 0; line < lines; line += 1) at = text.indexOf('\n', at) + 1;
  return at;
}

const PROBLEMS: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED: 'a quotation mark is never closed',
  CSV_INVALID_CLOSING_QUOTE: 'something follows a closing quotation mark',
  INVALID_OPENING_QUOTE: 'a quotation mark stands in the middle of a cell',
};
