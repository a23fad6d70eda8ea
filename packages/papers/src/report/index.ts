import { readEntry } from '@clampwright/record';
import { label } from '@clampwright/words';
import { openPdf, REPORT_INK } from '../pdf/index.ts';
import type { PaperOptions } from '../pdf/paper-options.ts';
import { A4, openFlow, sheetChrome } from '../typeset/index.ts';
import { entryAnnex } from './annex.ts';
import { inspectionChapter, nonconformanceChapter, peopleChapter, toolChapter } from './chapters.ts';
import { reportCover } from './cover.ts';
import { reportJointPages } from './joint-pages.ts';
import { jointWork } from './joint-work.ts';
import { minuteOf, readNames } from './names.ts';
import { proofPage } from './proof.ts';
import type { ReportSource } from './source.ts';

export type { ReportSource } from './source.ts';
export { reportSourceOf } from './source-of.ts';

/**
 * The report of a book of the log, A4: summary with what is open, a page or more for each joint, nonconformances and concessions,
 * inspection, tools, people and signatures, every entry, and the proof. PDF; the same book and instant give the same bytes.
 */
export async function reportPdf(source: ReportSource, { letters, organisation, made, progress }: PaperOptions): Promise<Uint8Array> {
  const { fold } = source;
  const names = await readNames(source);
  const works = fold
    .ids('joint')
    .map((id) => jointWork(fold, id))
    .sort((a, b) => (a.tag < b.tag ? -1 : 1));
  const found = fold.nonconformances();
  const { last, devices } = await ends(source);
  const steps = works.length + source.size;

  const about = { title: `${label('report.title')}: ${source.title}`, subject: label('paper.subject.report'), engine: source.engine, made };
  const flow = openFlow(openPdf(letters, organisation ? { ...about, author: organisation.name } : about), A4, REPORT_INK);
  reportCover(flow, source, { works, found, names, made, last }, organisation);
  for (const [at, work] of works.entries()) {
    reportJointPages(
      flow,
      work,
      found.filter(({ joint }) => joint === work.id),
      names,
    );
    progress?.(at + 1, steps);
  }
  nonconformanceChapter(flow, source, found, names);
  inspectionChapter(flow, works, names);
  toolChapter(flow, source, names);
  peopleChapter(flow, source, works, names);
  await entryAnnex(flow, source, names, (rows) => progress?.(works.length + Math.min(rows, source.size - 1), steps));
  proofPage(flow, source, devices, names);
  const foot = [
    organisation?.name,
    label('paper.engine', { engine: source.engine }),
    label('paper.made', { date: minuteOf(made.toISOString()) }),
  ];
  const bytes = await flow.finish(sheetChrome({ title: about.title, foot: foot.filter(Boolean).join(' · '), cover: true }));
  progress?.(steps, steps);
  return bytes;
}

/** When the last entry arrived, and how far the chain of each device goes. */
async function ends({ size, rows }: ReportSource): Promise<{ readonly last: string; readonly devices: ReadonlyMap<string, number> }> {
  const devices = new Map<string, number>();
  let last = '';
  for (let from = 0; from < size; from += 1000)
    for (const { receipt, bytes } of await rows(from, Math.min(1000, size - from))) {
      last = receipt.arrived;
      const kept = readEntry(bytes);
      if (kept.ok) devices.set(kept.value.entry.device, Math.max(kept.value.entry.sequence, devices.get(kept.value.entry.device) ?? 0));
    }
  return { last, devices };
}
