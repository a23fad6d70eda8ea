import { type JointPlan, orderOfRound, type StepPlan, type StepSetting, tightenedAlike } from '@clampwright/core';
import { hasTrouble, isFor, type JointDraft, type Tightened } from '@clampwright/record';

/** What is to be done at one bolt in one step, by the card and by the tool that took over, if one did. */
export interface BoltTask {
  readonly bolt: number;
  readonly plan: StepPlan;
  readonly tool?: string;
  /** the tool of the step, or of the step before it where it names none: a mark at an angle is turned to with the same tool */
  readonly inHand?: string | undefined;
  /** as the tool shows it; absent where the step has none */
  readonly setting?: string;
  /** N·mm */
  readonly torque?: number | undefined;
  /** of the reaction arm, N */
  readonly reaction?: number | undefined;
}

/** One step of a joint and how far it has come. */
export interface StepState {
  readonly step: string;
  /** from 1 */
  readonly n: number;
  readonly of: number;
  /** goes round until no nut moves */
  readonly repeats: boolean;
  /** bolts still to be taken, in the order to take them; a line holds those that are taken together */
  readonly open: readonly (readonly number[])[];
  readonly left: number;
}

/** Every step of a joint that has a card, in its order. */
export function stepStates(joint: JointDraft, card: JointPlan): StepState[] {
  const slice = joint.plan?.slice;
  if (!slice) return [];
  return slice.steps.map(({ step, ordered, repeats }, at) => {
    const mine = Array.from({ length: slice.bolts }, (_, i) => i + 1).filter((bolt) => planOf(card, bolt, step));
    const isOpen = repeats ? openInRound(joint, mine, step) : (bolt: number) => told(joint, bolt, step).length === 0;
    const lines = orderOfRound(card, step) ?? (ordered ? slice.sequence : mine.map((bolt) => [bolt]));
    const order = lines.map((line) => line.filter((bolt) => mine.includes(bolt)));
    // a bolt with trouble is left, and asked for again when all others of the step are done
    const [clear, troubled] = [false, true].map((trouble) =>
      order.map((line) => line.filter((bolt) => isOpen(bolt) && hasTrouble(joint, bolt) === trouble)).filter((line) => line.length > 0),
    ) as [number[][], number[][]];
    const open = [...clear, ...troubled];
    return { step, n: at + 1, of: slice.steps.length, repeats, open, left: open.reduce((sum, line) => sum + line.length, 0) };
  });
}

/** The step the joint is in: the first with a bolt left. */
export const currentStep = (states: readonly StepState[]): StepState | undefined => states.find(({ left }) => left > 0);

/** A round is gone again for all bolts as long as one nut moved in it. */
function openInRound(joint: JointDraft, bolts: readonly number[], step: string): (bolt: number) => boolean {
  const counts = new Map(bolts.map((bolt) => [bolt, told(joint, bolt, step).length]));
  const done = Math.min(...counts.values());
  const lastWhole = done > 0 ? bolts.map((bolt) => told(joint, bolt, step)[done - 1]!) : [];
  const quiet = done > 0 && lastWhole.every(({ end }) => end === 'no nut moves');
  return (bolt) => !quiet && counts.get(bolt) === done;
}

const told = (joint: JointDraft, bolt: number, step: string): readonly Tightened[] => joint.bolts.get(bolt)?.steps[step] ?? [];

const stepsOf = (card: JointPlan, bolt: number): readonly StepPlan[] =>
  tightenedAlike(card).find(({ positions }) => positions.includes(bolt))?.steps ?? [];

/** What the card says of a bolt in a step. */
export const planOf = (card: JointPlan, bolt: number, step: string): StepPlan | undefined =>
  stepsOf(card, bolt).find(({ name }) => name === step);

/** What to do at a bolt in a step. */
export function taskOf(joint: JointDraft, card: JointPlan, bolt: number, step: string): BoltTask | undefined {
  const steps = stepsOf(card, bolt);
  const at = steps.findIndex(({ name }) => name === step);
  const plan = steps[at];
  if (!plan) return undefined;
  if (plan.setting) return { bolt, plan, ...setFor(joint, bolt, step, plan.setting) };
  const before = plan.end.kind === 'mark at angle' ? steps.slice(0, at).findLast(({ setting }) => setting) : undefined;
  return { bolt, plan, inHand: before && setFor(joint, bolt, before.name, before.setting!).tool };
}

/** The planned setting, or that of the tool that took over. */
function setFor(joint: JointDraft, bolt: number, step: string, planned: StepSetting) {
  const swap = joint.swaps.findLast(({ from }) => from === planned.tool);
  const instead = swap?.settings.find((one) => isFor(one, bolt, step));
  if (!swap || !instead) {
    const { tool, text: setting, torque, reaction } = planned;
    return { tool, inHand: tool, setting, torque, reaction };
  }
  const { setting, torqueNewtonMillimetre: torque, reactionNewton: reaction } = instead;
  return { tool: swap.to, inHand: swap.to, setting, torque, reaction };
}

/** Bolts done in a step, the last first: what may be taken back. */
export function lastTightened(
  joint: JointDraft,
  device: string,
): { readonly bolt: number; readonly step: string; readonly told: Tightened } | undefined {
  const all = [...joint.bolts.values()].flatMap(({ position, steps }) =>
    Object.entries(steps).flatMap(([step, list]) =>
      list.filter((one) => one.device === device).map((one) => ({ bolt: position, step, told: one })),
    ),
  );
  const order = new Map(joint.history.map((hash, at) => [hash, at]));
  return all.sort((a, b) => (order.get(b.told.entry) ?? -1) - (order.get(a.told.entry) ?? -1))[0];
}
