import { openPdf, REPORT_INK } from '../pdf/index.ts';
import { languagesOf, type PaperOptions, twice } from '../pdf/paper-options.ts';
import { A4, setPaper, sheetChrome } from '../typeset/index.ts';
import { ANNEX_ROWS, entryAnnex } from './annex.ts';
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
export async function reportPdf(source: ReportSource, options: PaperOptions): Promise<Uint8Array> {
  const { letters, organisation, made, progress } = options;
  const languages = languagesOf(options);
  const { label, language } = languages[0];
  const { fold } = source;
  const names = await readNames(source, languages[0]);
  const works = fold
    .ids('joint')
    .map((id) => jointWork(fold, id))
    .sort((a, b) => (a.tag < b.tag ? -1 : 1));
  const found = fold.nonconformances();
  const byJoint = new Map<string | undefined, (typeof found)[number][]>();
  for (const one of found) byJoint.set(one.joint, [...(byJoint.get(one.joint) ?? []), one]);
  const { last, devices } = await ends(source);
  const about = {
    title: `${label('report.title')}: ${source.title}`,
    subject: label('paper.subject.report'),
    engine: source.engine,
    language,
    made,
  };
  const foot = [
    organisation?.name,
    label('paper.engine', { engine: source.engine }),
    label('paper.made', { date: minuteOf(made.toISOString()) }),
  ];
  const step = twice(works.length + Math.ceil(source.size / ANNEX_ROWS), progress);
  return setPaper(openPdf(letters, organisation ? { ...about, author: organisation.name } : about), {
    sheet: A4,
    inks: REPORT_INK,
    languages,
    chrome: sheetChrome({ title: about.title, foot: foot.filter(Boolean).join(' · '), cover: true }),
    async compose(flow) {
      reportCover(flow, source, { works, found, names, made, last }, organisation);
      for (const work of works) {
        reportJointPages(flow, work, byJoint.get(work.id) ?? [], names);
        await step();
      }
      nonconformanceChapter(flow, source, found, names);
      inspectionChapter(flow, works, names);
      toolChapter(flow, source, names);
      peopleChapter(flow, source, works, names);
      await entryAnnex(flow, source, names, step);
      proofPage(flow, source, devices, names);
    },
  });
}

/** When the last entry arrived, and how far the chain of each device goes. */
async function ends({ size, rows, fold }: ReportSource): Promise<{ readonly last: string; readonly devices: ReadonlyMap<string, number> }> {
  const devices = new Map<string, number>();
  let last = '';
  for (let from = 0; from < size; from += 1000)
    for (const { receipt } of await rows(from, Math.min(1000, size - from))) {
      last = receipt.arrived;
      const entry = fold.find(receipt.entry)?.entry;
      if (entry) devices.set(entry.device, Math.max(entry.sequence, devices.get(entry.device) ?? 0));
    }
  return { last, devices };
}
