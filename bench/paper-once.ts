// One paper in a process of its own, so that its memory is its own: `node --import tsx bench/paper-once.ts NAME COUNT`.
import { cardsPdf, reportPdf, reportSourceOf, type SheetTable, tablesXlsx } from '../packages/papers/src/out.ts';
import { installedLetters } from '../packages/papers/src/pdf/installed-letters.ts';
import { SPLICE, testPlan } from '../packages/papers/src/test-plan.ts';
import { TEST_LOG, testBook, testSource } from '../packages/record/src/test-handover.ts';

const MADE = new Date('2026-11-26T08:00:00Z');
const options = { letters: installedLetters(), made: MADE };
const ROW = ['FB-S1', 12, 'second step', 'SK-1', 'gear 3, step 6', 829.4, 270.1, true, 'stall', 41.5] as const;

/** A table of ten columns, five of them numbers or dates. */
const tableOf = (rows: number): SheetTable => ({
  name: 'rows',
  columns: ROW.map(
    (value, at) => ({ head: `column ${at} [unit]`, kind: typeof value === 'number' ? 'number' : 'text', digits: 1 }) as const,
  ),
  rows: Array.from({ length: rows }, (_, i) => ROW.map((value) => (typeof value === 'number' ? value + i / 7 : value))),
});

/** Prepares and does; only the doing is timed, except for the report, whose reading of the log counts. */
const WORK: Readonly<Record<string, (count: number) => Promise<() => Promise<Uint8Array>>>> = {
  async report(joints) {
    const book = testSource(testBook(joints, { copied: false }));
    return async () => reportPdf(await reportSourceOf(book, TEST_LOG, '0.1.0'), options);
  },
  async 'report of rings'(joints) {
    const book = testSource(testBook(joints, { copied: false, bolts: 120 }));
    return async () => reportPdf(await reportSourceOf(book, TEST_LOG, '0.1.0'), options);
  },
  async cards(joints) {
    const plan = testPlan(Array.from({ length: joints }, (_, i) => ({ ...SPLICE, tag: `FB-${i}` })));
    return () => cardsPdf(plan, { ...options, paper: 'A5' });
  },
  async xlsx(rows) {
    const table = tableOf(rows);
    return () => tablesXlsx([table], MADE);
  },
  async 'write-excel-file'(rows) {
    const { default: writeExcelFile } = await import('write-excel-file/node');
    const table = tableOf(rows);
    return async () => {
      const data = [
        table.columns.map(({ head }) => ({ value: head })),
        ...table.rows.map((row) => row.map((value) => ({ value: value as string }))),
      ];
      return writeExcelFile(data).toBuffer();
    };
  },
};

const [name, count] = process.argv.slice(2);
const work = await WORK[name!]!(Number(count));
const start = performance.now();
const bytes = await work();
const ms = performance.now() - start;
const pages =
  Buffer.from(bytes)
    .toString('latin1')
    .match(/\/Type \/Page\b/g)?.length ?? 0;
console.log(JSON.stringify({ ms, bytes: bytes.length, pages, mebibytes: process.resourceUsage().maxRSS / 1024 }));
