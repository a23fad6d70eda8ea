import { civilDate, duties, type Plan, YEARLY_SAMPLE } from '@clampwright/core';
import {
  type DueDay,
  dueCalendar,
  dutyDays,
  logTables,
  planDays,
  planTables,
  type ReportSource,
  type SheetTable,
  tableCsv,
  tablesXlsx,
} from '@clampwright/papers/out';
import { finishedJoints } from '@clampwright/record';
import { refuse } from './exit.ts';
import { NO_KEY, onBook } from './on-book.ts';
import { type OutOption, plannedFor } from './planned-for.ts';
import type { DataOption } from './where-data-lies.ts';

/** What an export is written from: a plan, and the log where a book was named. */
interface Exported {
  readonly folder: string;
  readonly plan: Plan;
  readonly log?: ReportSource;
  readonly tables: readonly SheetTable[];
  readonly days: readonly DueDay[];
  readonly made: Date;
}

type Files = Readonly<Record<string, string | Uint8Array>>;

/** What each format writes: a format is its line here. */
const WRITERS = {
  xlsx: async ({ tables, made }) => ({ 'clampwright.xlsx': await tablesXlsx(tables, made) }),
  csv: async ({ tables }) =>
    Object.fromEntries(tables.map((table) => [`${table.name.toLowerCase().replace(/\W+/g, '-')}.csv`, tableCsv(table)])),
  ics: async ({ plan, days, made }) => ({ 'due-dates.ics': dueCalendar(plan.job.title, days, made) }),
} satisfies Readonly<Record<string, (of: Exported) => Promise<Files>>>;

const EXPORT_FORMATS = Object.keys(WRITERS) as readonly (keyof typeof WRITERS)[];

export interface ExportOptions extends OutOption, DataOption {
  readonly format?: readonly (keyof typeof WRITERS)[];
  /** id of the job whose log goes out with the plan */
  readonly book?: string;
}

/** `clampwright export FOLDER`: plan, and log where a book is named, as files that other programs read. */
export async function exportCommand(folder: string, options: ExportOptions): Promise<number> {
  const { book } = options;
  if (book === undefined) return exported(folder, options);
  const { reportSource } = await import('@clampwright/server');
  return onBook(book, options, async (store) => {
    const log = await reportSource(store, book);
    return log ? exported(folder, options, log) : refuse(NO_KEY);
  });
}

const exported = (folder: string, { format = EXPORT_FORMATS, out }: ExportOptions, log?: ReportSource): Promise<number> =>
  plannedFor(folder, { out }, 'export, formats', async (plan, { made, progress }) => {
    const tables = [...planTables(plan), ...(log ? await logTables(log) : [])];
    const days = [...planDays(plan), ...(log ? dutyDays(dutiesOf(log, made)) : [])];
    const files: Record<string, string | Uint8Array> = {};
    for (const [at, one] of format.entries()) {
      Object.assign(files, await WRITERS[one]({ folder, plan, tables, days, made, ...(log ? { log } : {}) }));
      progress?.(at + 1, format.length);
    }
    return files;
  });

/** When the signed joints of a book fall due for retightening, by the yearly rule. */
const dutiesOf = ({ fold }: ReportSource, made: Date) =>
  duties(finishedJoints(fold), YEARLY_SAMPLE, civilDate(made.toISOString().slice(0, 10))!);
