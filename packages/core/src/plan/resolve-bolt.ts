import { findGrade } from '../fasteners/find-grade.ts';
import { findInchThread } from '../fasteners/find-inch-thread.ts';
import { findThread } from '../fasteners/find-thread.ts';
import { strengthAt } from '../fasteners/grade.ts';
import type { Thread } from '../fasteners/thread.ts';
import type { Subgroup } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { RuleSetId } from '../rules/index.ts';
import type { BoltUnderRule } from '../rules/rule-set.ts';
import type { Context } from './context.ts';

/** The thread of a planned size, metric or inch. */
export const threadOf = (size: string): Thread | undefined => {
  const found = findThread(size);
  return found.ok ? found.value : findInchThread(size, 'flange-stud');
};

/** The bolt a subgroup means, with its lot's friction, as a rule set wants to see it; or everything that is unknown about it. */
export function resolveBolt(context: Context, subgroup: Subgroup, rule: RuleSetId, edition: string): Outcome<BoltUnderRule> {
  const notices: Notice[] = [];
  const collect = <T>(outcome: Outcome<T>): T | undefined => {
    if (outcome.ok) return outcome.value;
    notices.push(...outcome.notices.map((one) => (subgroup.place ? { ...one, place: subgroup.place } : one)));
    return undefined;
  };
  const stud = rule === 'flange-bolt-stress' ? findInchThread(subgroup.size, 'flange-stud') : undefined;
  const thread = stud ?? collect(findThread(subgroup.size));
  const grade = collect(findGrade(subgroup.grade));
  const strength = thread && grade ? collect(strengthAt(grade, thread.diameter, thread.designation)) : undefined;
  const lot = subgroup.lot === undefined ? undefined : context.lotById.get(subgroup.lot);
  if (subgroup.lot !== undefined && !lot) notices.push(notice('lot-unknown', { lot: subgroup.lot }, subgroup.place));
  if (lot?.testedTurning !== undefined && lot.testedTurning !== subgroup.turned) {
    notices.push(notice('turned-not-tested', { lot: lot.id, turned: subgroup.turned, tested: lot.testedTurning }, subgroup.place));
  }
  if (lot?.failed) notices.push(notice('lot-failed', { lot: lot.id }, subgroup.place));
  if (!thread || !grade || !strength || notices.length > 0) return refused(...notices);
  const friction = lot?.friction ?? subgroup.friction;
  const kClass = lot?.kClass ?? subgroup.kClass;
  return done({
    thread,
    grade,
    strength,
    edition,
    system: subgroup.system,
    // a test vouches for the friction of its own lot, not for one that was entered with the joint
    tested: lot?.friction !== undefined && lot.tested,
    slopedFaces: subgroup.slopedFaces,
    retightened: subgroup.retightened,
    turned: subgroup.turned,
    given: subgroup.given,
    ...(friction ? { friction } : {}),
    ...(kClass ? { kClass } : {}),
    ...(lot?.verifiedTorque === undefined ? {} : { verifiedTorque: lot.verifiedTorque }),
    ...(subgroup.clampThickness === undefined ? {} : { clampThickness: subgroup.clampThickness }),
    ...(subgroup.length === undefined ? {} : { length: subgroup.length }),
  });
}
