import { mayBeIssued, type Plan } from '@clampwright/core';
import type { CardWithdrawn } from '../entry/kinds/card-withdrawn.ts';
import type { Fold } from '../fold/fold.ts';

/** A joint that has a card of an earlier plan, and how far the work on it is. */
export interface IssuedJoint {
  readonly joint: string;
  readonly tag: string;
  readonly work: 'untouched' | 'begun' | 'finished';
}

/** The joints of a book that have a card in force. Finished: signed by a crew. */
export const issuedJoints = (fold: Fold): IssuedJoint[] =>
  fold.ids('joint').flatMap((id): IssuedJoint[] => {
    const { joint, tag = id, plan, bolts, signatures, takenOff: off } = fold.state('joint', id);
    if (!plan || off) return [];
    const finished = signatures.some((one) => one.as === 'crew');
    return [{ joint, tag, work: finished ? 'finished' : bolts.size > 0 ? 'begun' : 'untouched' }];
  });

export interface TakenOff extends Pick<CardWithdrawn, 'joint' | 'reason'> {
  readonly tag: string;
}

/**
 * Joints of earlier plans that a new one takes off: those that stop in it, whatever was done; those that it does not have and that are not
 * finished; and those begun, where it says that work begun stops.
 */
export function takenOff(plan: Plan, before: readonly IssuedJoint[] = [], earlier: 'continue' | 'stop' = 'continue'): TakenOff[] {
  const planned = new Map(plan.joints.map((joint) => [joint.tag, joint]));
  const reasonOf = ({ tag, work }: IssuedJoint): TakenOff['reason'] | undefined => {
    const now = planned.get(tag);
    if (!now) return work === 'finished' ? undefined : 'gone';
    if (!mayBeIssued(now)) return 'stops';
    return earlier === 'stop' && work === 'begun' ? 'begun' : undefined;
  };
  return before.flatMap((one) => {
    const reason = reasonOf(one);
    return reason === undefined ? [] : [{ joint: one.joint, tag: one.tag, reason }];
  });
}
