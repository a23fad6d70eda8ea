import type { CivilDate, FinishedJoint } from '@clampwright/core';
import type { Fold } from './fold.ts';

/**
 * The joints of a book that a crew has signed, as a maintenance rule wants to see them: the day of the last signature, and of the last
 * retightening. A joint whose nonconformance is open is among them: it was tightened, and falls due like the others.
 */
export function finishedJoints(fold: Fold): FinishedJoint[] {
  return fold.ids('joint').flatMap((id): FinishedJoint[] => {
    const { tag = id, plan, bolts, signatures, retightening } = fold.state('joint', id);
    const finished = lastDay(signatures.filter((one) => one.as === 'crew'));
    if (!finished) return [];
    const lastLookedAt = lastDay(retightening.filter(({ done }) => done));
    return [{ tag, bolts: plan?.slice.bolts ?? bolts.size, finished, ...(lastLookedAt ? { lastLookedAt } : {}) }];
  });
}

/** `on` is the civil date at the place where it was told. */
const lastDay = (told: readonly { readonly mention: { readonly on: string } }[]): CivilDate | undefined =>
  told
    .map(({ mention }) => mention.on as CivilDate)
    .sort()
    .at(-1);
