import type { InspectionPlan, WorkPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type Words } from '@clampwright/words';
import { known, type ToldFact } from './fact.ts';

/** A number, not a text: it is written with the decimal sign of the language. */
const kilojoule = (joule: number) => Number((joule / 1000).toFixed(joule < 10_000 ? 1 : 0));

/** Time and energy of a joint, and where one may stop. */
export const workFacts = (work: WorkPlan, { label }: Words = ENGLISH_WORDS): ToldFact[] =>
  known([
    { name: label('work.pulls'), text: String(work.pulls) },
    { name: label('work.minutes'), text: label('work.minutes-value', { minutes: Math.round(work.minutes) }) },
    { name: label('work.energy'), text: label('work.energy-value', { energy: kilojoule(work.energy) }) },
    work.draw !== undefined && { name: label('work.draw'), text: label('work.draw-value', { energy: kilojoule(work.draw) }) },
    { name: label('work.ends'), text: label(`work.ends.${work.ends}`) },
    { name: label('work.safe-stop'), text: label(`work.safe-stop.${work.safeStop}`) },
  ]);

/** What is looked at afterwards, when, and at how many bolts. */
export const inspectionFacts = (inspection: InspectionPlan, { label }: Words = ENGLISH_WORDS): ToldFact[] =>
  known([
    { name: label('inspection.method'), text: label(`inspection.method.${inspection.method}`) },
    inspection.window && { name: label('inspection.window'), text: windowText(inspection.window, label) },
    inspection.sample !== undefined && { name: label('inspection.sample'), text: String(inspection.sample) },
  ]);

const windowText = ({ from, until }: { readonly from: number; readonly until?: number }, label: Words['label']) =>
  until === undefined ? label('inspection.window-from', { from }) : label('inspection.window-both', { from, until });
