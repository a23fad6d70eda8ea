import type { Plan } from '@clampwright/core';
import { openPdf, REPORT_INK } from '../pdf/index.ts';
import { languagesOf, type PaperOptions, twice } from '../pdf/paper-options.ts';
import { A4, setPaper, sheetChrome } from '../typeset/index.ts';
import { planAnnex } from './annex.ts';
import { planCover } from './cover.ts';
import { planJointPages } from './joint.ts';

/** The plan on A4 for review: overview, a page or two for each joint, and an annex with every formula and source. PDF. */
export async function planPdf(plan: Plan, options: PaperOptions): Promise<Uint8Array> {
  const { letters, organisation, made, progress } = options;
  const { title } = plan.job;
  const languages = languagesOf(options);
  const { label, language } = languages[0];
  const about = { title: `${label('page.plan')}: ${title}`, subject: label('paper.subject.plan'), engine: plan.engine, language, made };
  const pdf = openPdf(letters, organisation ? { ...about, author: organisation.name } : about);
  const foot = [organisation?.name, label('paper.engine', { engine: plan.engine }), plan.job.workDate].filter(Boolean).join(' · ');
  const steps = twice(plan.joints.length, progress);
  return setPaper(pdf, {
    sheet: A4,
    inks: REPORT_INK,
    languages,
    chrome: sheetChrome({ title: about.title, foot, cover: true }),
    async compose(flow) {
      planCover(flow, plan, organisation);
      for (const joint of plan.joints) {
        planJointPages(flow, joint, plan.job.units);
        await steps();
      }
      planAnnex(flow, plan);
    },
  });
}
