import { readEntry } from '@clampwright/record';
import { label } from '@clampwright/words';
import { type Flow, heading, paragraph, table } from '../typeset/index.ts';
import { entryText } from './entry-text.ts';
import { minuteOf, type Names } from './names.ts';
import type { ReportSource } from './source.ts';

const ROWS = 1000;

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
export async function entryAnnex(flow: Flow, source: ReportSource, names: Names, progress: (rows: number) => void): Promise<void> {
  flow.turn();
  flow.section(label('report.annex'), 1);
  heading(flow, label('report.annex'), 1);
  paragraph(flow, label('report.annex-lead'), { ink: 'quiet', size: 8.5 });
  const lines: Line[] = [];
  for (let from = 0; from < source.size; from += ROWS) {
    for (const { receipt, bytes } of await source.rows(from, Math.min(ROWS, source.size - from))) {
      const kept = readEntry(bytes);
      if (!kept.ok) continue;
      const { entry, hash } = kept.value;
      lines.push({
        index: receipt.index,
        arrived: minuteOf(receipt.arrived),
        device: names.device(entry.device),
        by: entry.by === undefined ? '' : names.person(entry.by),
        text: entryText(entry, names),
        struck: source.fold.corrections(hash).length > 0,
        hash: hash.slice(0, 12),
      });
    }
    progress(Math.min(from + ROWS, source.size));
  }
  table(
    flow,
    [
      { head: label('report.col.index'), width: 1.1, align: 'right', cell: ({ index }) => String(index) },
      { head: label('report.col.arrived'), width: 2.3, cell: ({ arrived }) => arrived },
      { head: label('report.col.device'), width: 1.7, cell: ({ device }) => device },
      { head: label('report.col.by'), width: 2.1, cell: ({ by }) => by },
      { head: label('report.col.entry'), width: 8, cell: ({ text, struck }) => ({ text, struck }) },
      { head: label('report.col.hash'), width: 2, cell: ({ hash }) => ({ text: hash, face: 'mono', ink: 'quiet' }) },
    ],
    lines,
    { size: 6.5 },
  );
}
