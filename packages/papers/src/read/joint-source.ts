import type { Outcome } from '@clampwright/core';
import { stringify } from 'csv-stringify/sync';
import { recogniseColumns } from './columns.ts';
import { type HeadingMeans, headingMemory } from './heading-memory.ts';
import type { OpenFile } from './open-file.ts';
import { readHead, readTable } from './table.ts';
import { fieldsOf } from './tables/index.ts';
import { workbookKind } from './workbook/workbook.ts';

/** The headings of a joint list and what each was understood as; `undefined` where there is no such list. */
export interface JointHeadings {
  readonly file: string;
  /** row of the headings, as a spreadsheet shows it */
  readonly row: number;
  readonly columns: readonly { readonly heading: string; readonly field?: string; readonly says?: string }[];
}

const WANTED = ['tag', 'grade'] as const;

/** What the columns of a joint list mean. `means`: what a person says now of headings. */
export function jointHeadings(open: OpenFile, file: string, means: readonly HeadingMeans[] = []): JointHeadings | undefined {
  const bytes = open(file);
  if (typeof bytes === 'string') return undefined;
  const memory = headingMemory(open, means);
  const head = readHead(bytes, file, { table: 'joints', required: WANTED, memory });
  if (!head) return undefined;
  const { at } = recogniseColumns(head, 'joints', WANTED, memory);
  const fieldAt = new Map([...at].map(([field, { index }]) => [index, field]));
  return {
    file: head.file,
    row: head.headingRow,
    columns: head.headings.map((heading, index) => {
      const field = fieldAt.get(index);
      return field === undefined ? { heading } : { heading, field, says: fieldsOf('joints')[field]!.says };
    }),
  };
}

/** A joint list as CSV, to be edited: a sheet of a workbook becomes one, a CSV file stays as it is. */
export function asCsv(bytes: Uint8Array, file: string): Outcome<Uint8Array> {
  if (workbookKind(bytes) === undefined) return { ok: true, value: bytes };
  const table = readTable(bytes, file, { table: 'joints', required: WANTED, memory: headingMemory(() => 'missing') });
  if (!table.ok) return table;
  const { headings, rows } = table.value;
  const text = stringify([headings, ...rows.map(({ cells }) => headings.map((_, at) => cells[at] ?? ''))]);
  return { ok: true, value: new TextEncoder().encode(text) };
}
