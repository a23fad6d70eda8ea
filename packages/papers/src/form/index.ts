import type { Plan } from '@clampwright/core';
import { ENGLISH_WORDS } from '@clampwright/words';
import { jointWork } from '../report/joint-work.ts';
import { readNames } from '../report/names.ts';
import type { ReportSource } from '../report/source.ts';
import type { Organisation } from '../typeset/chrome.ts';
import { type FilledForm, fillForm } from './fill-form.ts';
import { planFields } from './plan-fields.ts';
import { workFields } from './work-fields.ts';

export { type FilledForm, NoForm } from './fill-form.ts';

/** The client's form once for each joint of a plan. */
export const planForms = (
  template: Uint8Array,
  plan: Plan,
  organisation?: Organisation,
): { readonly tag: string; readonly form: FilledForm }[] =>
  plan.joints.map((joint) => ({ tag: joint.tag, form: fillForm(template, planFields(plan, joint, organisation)) }));

/** The client's form once for each joint of a book: what was done. */
export async function workForms(
  template: Uint8Array,
  source: ReportSource,
): Promise<{ readonly tag: string; readonly form: FilledForm }[]> {
  const names = await readNames(source, ENGLISH_WORDS);
  return source.fold.ids('joint').map((id) => {
    const work = jointWork(source.fold, id);
    return { tag: work.tag, form: fillForm(template, workFields(work, names)) };
  });
}
