import { type Notice, notice, type Outcome, refused } from '@clampwright/core';
import { LARGEST_FILE, LARGEST_FILE_TEXT } from './decode.ts';
import { HEAD_ROWS, type TableSource } from './table-source.ts';
import { openWorkbook } from './workbook/workbook.ts';

/** The sheets of an XLSX file as table sources; those that are hidden are not read unless they are named. */
export function workbookSources(bytes: Uint8Array, file: string, sheet?: string): Outcome<readonly TableSource[]> {
  if (bytes.length > LARGEST_FILE) return refused(notice('file-too-large', { file, limit: LARGEST_FILE_TEXT }, { file }));
  const book = openWorkbook(bytes, file);
  if (!book.ok) return book;
  const names = book.value.map(({ name }) => name);
  if (sheet !== undefined && !names.includes(sheet)) return refused(notice('sheet-missing', { sheet, sheets: names.join(', ') }, { file }));
  const sources = book.value
    .filter(({ name, hidden }) => (sheet === undefined ? !hidden : name === sheet))
    .map(
      ({ name, hidden, read }): TableSource => ({
        file,
        sheet: name,
        hidden,
        decimals: 'either',
        ragged: true,
        head: () => {
          const first = read(HEAD_ROWS);
          return first.ok ? { ok: true, value: first.value.rows } : first;
        },
        all: (visit) => {
          const every = read();
          if (!every.ok) return every;
          const { rows, hidden: rowsHidden } = every.value;
          const said: Notice[] = rowsHidden === 0 ? [] : [notice('rows-hidden', { rows: rowsHidden }, { file, sheet: name })];
          for (const row of rows) visit(row);
          return { ok: true, value: { lost: [], notices: said } };
        },
      }),
    );
  return { ok: true, value: sources };
}
