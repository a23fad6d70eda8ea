import { decode } from '../read/decode.ts';

/** One record of a CSV file: its cells, and the text it stands as, line end and all. */
interface CsvRecord {
  readonly cells: readonly string[];
  readonly raw: string;
}

/** A CSV file as its person wrote it. Only records that change are written anew; all others keep every byte. */
export interface CsvText {
  readonly separator: string;
  readonly lineEnd: string;
  /** the byte order mark, where there is one */
  readonly mark: '' | '\ufeff';
  readonly records: readonly CsvRecord[];
}

const SEPARATORS = [';', '\t', ','] as const;

/** Takes a CSV file apart; `undefined` where it is no text. The separator is the one that stands most often in the first row. */
export function csvText(bytes: Uint8Array): CsvText | undefined {
  const decoded = bytes.length === 0 ? { ok: true as const, value: { text: '' } } : decode(bytes, '');
  if (!decoded.ok) return undefined;
  // the decoder takes the mark off
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\ufeff' : '';
  const { text } = decoded.value;
  const separator = separatorOf(text);
  return { separator, lineEnd: text.includes('\r\n') ? '\r\n' : '\n', mark, records: recordsOf(text, separator) };
}

/** The bytes of a CSV file, UTF-8. */
export const csvBytes = ({ mark, records }: CsvText): Uint8Array => new TextEncoder().encode(mark + records.map(({ raw }) => raw).join(''));

/** The same file with other cells; records are counted from 0, headings among them. */
export function withCells(
  file: CsvText,
  changes: readonly { readonly record: number; readonly column: number; readonly text: string }[],
): CsvText {
  const records = [...file.records];
  const changed = new Map<number, string[]>();
  for (const { record, column, text } of changes) {
    const cells = changed.get(record) ?? [...(records[record]?.cells ?? [])];
    while (cells.length <= column) cells.push('');
    cells[column] = text;
    changed.set(record, cells);
  }
  for (const [record, cells] of changed) records[record] = recordOf(cells, file);
  return { ...file, records: closed(records, file.lineEnd) };
}

/** The same file with records put in before `at`. */
export const withRecords = (file: CsvText, at: number, added: readonly (readonly string[])[]): CsvText => {
  const made = added.map((cells) => recordOf(cells, file));
  return { ...file, records: closed([...file.records.slice(0, at), ...made, ...file.records.slice(at)], file.lineEnd) };
};

/** The same file without some records. */
export const withoutRecords = (file: CsvText, gone: ReadonlySet<number>): CsvText => ({
  ...file,
  records: file.records.filter((_, at) => !gone.has(at)),
});

/** A record as it is written into this file. */
const recordOf = (cells: readonly string[], { separator, lineEnd }: Pick<CsvText, 'separator' | 'lineEnd'>): CsvRecord => ({
  cells,
  raw: cells.map((cell) => quoted(cell, separator)).join(separator) + lineEnd,
});

const quoted = (cell: string, separator: string): string =>
  cell.includes(separator) || /["\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;

/** A last record without a line end gets one, once another stands behind it. */
const closed = (records: readonly CsvRecord[], lineEnd: string): CsvRecord[] =>
  records.map((one, at) => (at < records.length - 1 && !/[\r\n]$/.test(one.raw) ? { ...one, raw: one.raw + lineEnd } : one));

function separatorOf(text: string): string {
  const line = /^\s*(.*)/.exec(text.slice(0, 100_000))?.[1] ?? '';
  const bare = line.replace(/"[^"]*"/g, '');
  const count = (separator: string) => bare.split(separator).length - 1;
  return SEPARATORS.toSorted((a, b) => count(b) - count(a))[0]!;
}

function recordsOf(text: string, separator: string): CsvRecord[] {
  const records: CsvRecord[] = [];
  let [start, at] = [0, 0];
  while (at < text.length) {
    const cells: string[] = [];
    let ended = false;
    while (!ended) {
      const cell = cellAt(text, at, separator);
      cells.push(cell.text);
      at = cell.end;
      if (text[at] === separator) at += 1;
      else ended = true;
    }
    if (text[at] === '\r') at += 1;
    if (text[at] === '\n') at += 1;
    records.push({ cells: cells.length === 1 && cells[0] === '' ? [] : cells, raw: text.slice(start, at) });
    start = at;
  }
  return records;
}

/** One cell and where it ends. A quotation mark inside a bare cell is a sign like any other, as readers of lists are told of it. */
function cellAt(text: string, from: number, separator: string): { readonly text: string; readonly end: number } {
  let at = from;
  while (text[at] === ' ') at += 1;
  if (text[at] !== '"') {
    let end = from;
    while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end += 1;
    return { text: text.slice(from, end).trim(), end };
  }
  let cell = '';
  at += 1;
  for (;;) {
    const close = text.indexOf('"', at);
    if (close === -1) return { text: cell + text.slice(at), end: text.length };
    cell += text.slice(at, close);
    at = close + 1;
    if (text[at] !== '"') break;
    cell += '"';
    at += 1;
  }
  while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r') at += 1;
  return { text: cell, end: at };
}
