import { type JointPlan, levelOf, type Notice } from '@clampwright/core';
import type { JointDraft } from '@clampwright/record';
import type { Book } from './book.ts';
import { currentStep, type StepState, stepStates } from './next-bolt.ts';

/** Where a joint stands, for the crew. */
export interface JointState {
  readonly joint: JointDraft;
  readonly card: JointPlan | undefined;
  readonly steps: readonly StepState[];
  readonly current: StepState | undefined;
  /** what it waits for: a person or a paper has to release each */
  readonly holds: readonly Notice[];
  readonly where: 'stopped' | 'held' | 'open' | 'done' | 'signed';
  /** why nobody goes on: its plan was withdrawn, or a later one does not carry it */
  readonly stopped: Stopped | undefined;
}
export interface Stopped {
  readonly why: 'withdrawn' | NonNullable<JointDraft['takenOff']>['reason'];
  /** of the plan that was withdrawn, or that took the joint off */
  readonly number: string;
}

/** Before the first bolt: bolt 1 is where the plan has it, and the assembly was looked at and found right. */
export const isLookedAt = ({ datum, assembly }: Pick<JointDraft, 'datum' | 'assembly'>): boolean =>
  datum?.agrees === true && assembly?.passed === true;

export function jointState(book: Book, id: string): JointState {
  const joint = book.fold.state('joint', id);
  const card = book.cardOf(joint);
  const steps = card ? stepStates(joint, card) : [];
  const current = currentStep(steps);
  const released = new Set(joint.released.map(({ name }) => name));
  const holds = (card?.reasons ?? []).filter((one) => levelOf(one.code) === 'hold' && !released.has(one.code));
  const signed = joint.signatures.some((one) => one.as === 'crew');
  const stopped = stoppedOf(book, joint);
  const whereOf = (): JointState['where'] => {
    if (stopped) return 'stopped';
    if (signed && !current) return 'signed';
    if (!current && steps.length > 0) return 'done';
    return holds.length > 0 ? 'held' : 'open';
  };
  return {
    joint,
    card,
    steps,
    current,
    holds,
    where: whereOf(),
    stopped,
  };
}

function stoppedOf(book: Book, { takenOff, plan }: JointDraft): Stopped | undefined {
  if (takenOff) return { why: takenOff.reason, number: takenOff.number };
  const withdrawn = book.fold.state('book', 'book').plans.some((one) => one.number === plan?.number && one.withdrawn !== undefined);
  return withdrawn ? { why: 'withdrawn', number: plan!.number } : undefined;
}
