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
  readonly where: 'held' | 'open' | 'done' | 'signed';
  /** number of the plan where it was withdrawn */
  readonly withdrawn: string | undefined;
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
  const plan = book.fold.state('book', 'book').plans.find(({ number }) => number === joint.plan?.number);
  return {
    joint,
    card,
    steps,
    current,
    holds,
    where: signed && !current ? 'signed' : !current && steps.length > 0 ? 'done' : holds.length > 0 ? 'held' : 'open',
    withdrawn: plan?.withdrawn === undefined ? undefined : plan.number,
  };
}
