import type { Kept, Receipt } from '@clampwright/record';
import type { Words } from '@clampwright/words';
import { type Flow, heading, openTable, paragraph, said } from '../typeset/index.ts';
import { entryText } from './entry-text.ts';
import { minuteOf, type Names } from './names.ts';
import type { ReportSource } from './source.ts';

/** Entries that are read at a time. */
export const ANNEX_ROWS = 250;

interface Line {
  readonly index: number;
  readonly arrived: string;
  readonly device: string;
  readonly by: string;
  readonly text: string;
  readonly struck: boolean;
  readonly hash: string;
}

/** Every entry in the order in which the log took them. */
export async function entryAnnex(flow: Flow, source: ReportSource, names: Names, step: () => Promise<void>): Promise<void> {
  flow.turn();
  const [first] = flow.languages;
  flow.section(first.label('report.annex'), 1);
  heading(flow, said('report.annex'), 1);
  paragraph(flow, said('report.annex-lead'), { ink: 'quiet', size: 8.5 });
  const rows = openTable<Line>(
    flow,
    [
      { head: said('report.col.index'), width: 1.1, align: 'right', cell: ({ index }) => String(index) },
      { head: said('report.col.arrived'), width: 2.4, cell: ({ arrived }) => arrived },
      { head: said('report.col.device'), width: 2.5, cell: ({ device }) => device },
      { head: said('report.col.by'), width: 2, cell: ({ by }) => by },
      { head: said('report.col.entry'), width: 7.2, cell: ({ text, struck }) => ({ text, struck }) },
      { head: said('report.col.hash'), width: 2, cell: ({ hash }) => ({ text: hash, face: 'mono', ink: 'quiet' }) },
    ],
    { size: 6.5 },
  );
  for (let from = 0; from < source.size; from += ANNEX_ROWS) {
    for (const { receipt } of await source.rows(from, Math.min(ANNEX_ROWS, source.size - from))) {
      const kept = source.fold.find(receipt.entry);
      if (kept) rows.add(lineOf(receipt, kept, source, names, first));
    }
    await step();
  }
  rows.end();
}

const lineOf = ({ index, arrived }: Receipt, { entry, hash }: Kept, { fold }: ReportSource, names: Names, words: Words): Line => ({
  index,
  arrived: minuteOf(arrived),
  device: names.device(entry.device),
  by: entry.by === undefined ? '' : names.person(entry.by),
  text: entryText(entry, names, words),
  struck: fold.corrections(hash).length > 0,
  hash: hash.slice(0, 12),
});
