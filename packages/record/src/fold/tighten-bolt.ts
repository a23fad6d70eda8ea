import { notice } from '@clampwright/core';
import type { Told } from '../entry/kind.ts';
import type { SwappedSetting } from '../entry/kinds/tool-swapped.ts';
import { find } from './found.ts';
import { boltOf, type JointDraft, type Progress, type Tightened } from './joint-draft.ts';

/** How far `step` has come on the joint. */
export function progressOf(joint: JointDraft, step: string): Progress {
  const known = joint.progress.get(step);
  if (known) return known;
  const open = new Set(joint.plan?.lineOf.keys());
  for (const bolt of joint.bolts.values()) if ((bolt.steps[step]?.length ?? 0) > 0) open.delete(bolt.position);
  const progress = { open, front: 0 };
  joint.progress.set(step, progress);
  return progress;
}

/** Puts one bolt's tightening into the state and says what it contradicts. */
export function tightenBolt(joint: JointDraft, told: Told, position: number, step: string, done: Tightened): void {
  const { plan, found } = joint;
  const bolt = boltOf(joint, position);
  const before = bolt.steps[step];
  const at = plan?.slice.steps.findIndex((one) => one.step === step) ?? -1;
  const issued = plan?.slice.steps[at];
  if (before && !issued?.repeats) find(found, told, notice('bolt-tightened-twice', { bolt: position, step }), position);
  if (plan) {
    const { slice } = plan;
    if (position > slice.bolts) find(found, told, notice('bolt-not-in-joint', { bolt: position }), position);
    if (!issued) find(found, told, notice('step-not-issued', { step }), position);
    else {
      const left = slice.steps.find((one, i) => i < at && progressOf(joint, one.step).open.size > 0);
      if (left) find(found, told, notice('step-too-early', { bolt: position, step, open: left.step }), position);
      judgeSetting(joint, told, position, step, done, issued.settings);
      if (issued.ordered) judgeOrder(joint, told, position, step);
    }
  }
  if (before) before.push(done);
  else bolt.steps[step] = [done];
  bolt.loosened = false;
  progressOf(joint, step).open.delete(position);
}

function judgeSetting(
  joint: JointDraft,
  told: Told,
  position: number,
  step: string,
  { tool, setting }: Tightened,
  settings: readonly { readonly tool: string; readonly setting: string; readonly positions: readonly number[] }[],
): void {
  if (tool === undefined || setting === undefined) return;
  const fits =
    settings.some((one) => one.tool === tool && one.setting === setting && one.positions.includes(position)) ||
    joint.swaps.some(({ to, settings: own }) => to === tool && own.some((one) => one.setting === setting && isFor(one, position, step)));
  if (!fits) find(joint.found, told, notice('setting-not-issued', { bolt: position, step, tool, setting }), position);
}

/** Does a setting of a tool that took over hold for this bolt in this step? */
export const isFor = (one: SwappedSetting, bolt: number, step: string): boolean =>
  one.step === step && (one.positions === undefined || one.positions.includes(bolt));

/** Something was told of the bolt that is to be settled first. */
export const hasTrouble = (joint: JointDraft, bolt: number): boolean => (joint.bolts.get(bolt)?.trouble.length ?? 0) > 0;

/** A bolt may be ahead of the sequence by as many lines as tools work at once. */
function judgeOrder(joint: JointDraft, told: Told, position: number, step: string): void {
  const { slice, lineOf } = joint.plan!;
  const progress = progressOf(joint, step);
  // a bolt with trouble is left until it is settled: nobody who goes on is out of order
  const isOpen = (line: number) => slice.sequence[line]!.some((bolt) => progress.open.has(bolt) && !hasTrouble(joint, bolt));
  const own = lineOf.get(position) ?? slice.sequence.length;
  while (progress.front < slice.sequence.length && !isOpen(progress.front)) progress.front += 1;
  let ahead = 0;
  for (let line = progress.front; line < own && ahead < slice.toolsAtOnce; line += 1) if (isOpen(line)) ahead += 1;
  if (ahead >= slice.toolsAtOnce) find(joint.found, told, notice('bolt-out-of-order', { bolt: position, step }), position);
}

/** What was done to a bolt before no longer counts: it was replaced or loosened. */
export function startAfresh(joint: JointDraft, position: number): void {
  boltOf(joint, position).steps = {};
  if (!joint.plan?.lineOf.has(position)) return;
  for (const progress of joint.progress.values()) {
    progress.open.add(position);
    progress.front = 0;
  }
}
