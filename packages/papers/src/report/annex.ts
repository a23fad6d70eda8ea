import type { Kept, Receipt } from '@clampwright/record';
import { label } from '@clampwright/words';
import { type Flow, heading, openTable, paragraph } from '../typeset/index.ts';
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
  flow.section(label('report.annex'), 1);
  heading(flow, label('report.annex'), 1);
  paragraph(flow, label('report.annex-lead'), { ink: 'quiet', size: 8.5 });
  const rows = openTable<Line>(
    flow,
    [
      { head: label('report.col.index'), width: 1.1, align: 'right', cell: ({ index }) => String(index) },
      { head: label('report.col.arrived'), width: 2.4, cell: ({ arrived }) => arrived },
      { head: label('report.col.device'), width: 2.5, cell: ({ device }) => device },
      { head: label('report.col.by'), width: 2, cell: ({ by }) => by },
      { head: label('report.col.entry'), width: 7.2, cell: ({ text, struck }) => ({ text, struck }) },
      { head: label('report.col.hash'), width: 2, cell: ({ hash }) => ({ text: hash, face: 'mono', ink: 'quiet' }) },
    ],
    { size: 6.5 },
  );
  for (let from = 0; from < source.size; from += ANNEX_ROWS) {
    for (const { receipt } of await source.rows(from, Math.min(ANNEX_ROWS, source.size - from))) {
      const kept = source.fold.find(receipt.entry);
      if (kept) rows.add(lineOf(receipt, kept, source, names));
    }
    await step();
  }
  rows.end();
}

const lineOf = ({ index, arrived }: Receipt, { entry, hash }: Kept, { fold }: ReportSource, names: Names): Line => ({
  index,
  arrived: minuteOf(arrived),
  device: names.device(entry.device),
  by: entry.by === undefined ? '' : names.person(entry.by),
  text: entryText(entry, names),
  struck: fold.corrections(hash).length > 0,
  hash: hash.slice(0, 12),
});
