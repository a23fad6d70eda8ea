import { notice } from '@clampwright/core';
import type { Told } from '../entry/kind.ts';
import { find } from './found.ts';
import { boltOf, type JointDraft, type Tightened } from './joint-draft.ts';

/** Bolts of the joint that `step` has not reached yet. */
export function openIn(joint: JointDraft, step: string): Set<number> {
  const known = joint.open.get(step);
  if (known) return known;
  const open = new Set(joint.plan?.slice.sequence.flat() ?? []);
  for (const bolt of joint.bolts.values()) if (isDone(bolt.steps[step])) open.delete(bolt.position);
  joint.open.set(step, open);
  return open;
}

const isDone = (times: readonly Tightened[] | undefined) => times !== undefined && times.length > 0;

/** Puts one bolt's tightening into the state and says what it contradicts. */
export function tightenBolt(joint: JointDraft, told: Told, position: number, step: string, done: Tightened): void {
  const { plan, found } = joint;
  const bolt = boltOf(joint, position);
  const before = bolt.steps[step] ?? [];
  const at = plan?.slice.steps.findIndex((one) => one.step === step) ?? -1;
  const issued = plan?.slice.steps[at];
  if (before.length > 0 && !issued?.repeats) find(found, told, notice('bolt-tightened-twice', { bolt: position, step }), position);
  if (plan) {
    const { slice } = plan;
    if (position > slice.bolts) find(found, told, notice('bolt-not-in-joint', { bolt: position }), position);
    if (!issued) find(found, told, notice('step-not-issued', { step }), position);
    else {
      const left = slice.steps.slice(0, at).find((one) => openIn(joint, one.step).size > 0);
      if (left) find(found, told, notice('step-too-early', { bolt: position, step, open: left.step }), position);
      judgeSetting(joint, told, position, step, done, issued.settings);
      if (issued.ordered) judgeOrder(joint, told, position, step);
    }
  }
  bolt.steps[step] = [...before, done];
  bolt.loosened = false;
  openIn(joint, step).delete(position);
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
    joint.swaps.some(({ to, settings: own }) => to === tool && own.some((one) => one.step === step && one.setting === setting));
  if (!fits) find(joint.found, told, notice('setting-not-issued', { bolt: position, step, tool, setting }), position);
}

/** A bolt may be ahead of the sequence by as many lines as tools work at once. */
function judgeOrder(joint: JointDraft, told: Told, position: number, step: string): void {
  const { sequence, toolsAtOnce } = joint.plan!.slice;
  const open = openIn(joint, step);
  let ahead = 0;
  for (const line of sequence) {
    if (line.includes(position)) return;
    if (line.some((bolt) => open.has(bolt))) ahead += 1;
    if (ahead >= toolsAtOnce) {
      find(joint.found, told, notice('bolt-out-of-order', { bolt: position, step }), position);
      return;
    }
  }
}

/** What was done to a bolt before no longer counts: it was replaced or loosened. */
export function startAfresh(joint: JointDraft, position: number): void {
  const bolt = boltOf(joint, position);
  bolt.steps = {};
  for (const open of joint.open.values()) if (joint.plan && position <= joint.plan.slice.bolts) open.add(position);
}
