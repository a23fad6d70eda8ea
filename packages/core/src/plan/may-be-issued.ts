import { levelOf } from '../notice/index.ts';
import type { JointPlan } from './plan.ts';

/**
 * A joint that stops for nothing but a paper or a person that is still to come, while all of its steps are planned. It may be issued with
 * that hold: nobody begins before a named person has released it.
 */
export const onlyWaits = ({ verdict, reasons, subgroups }: JointPlan): boolean =>
  verdict === 'stop' &&
  reasons.every(({ code }) => ['hold', 'attention'].includes(levelOf(code))) &&
  subgroups.every(({ tightening }) => tightening !== undefined && tightening.steps.length > 0);

/** Whether a joint goes to the crew: it does not stop, or only waits. */
export const mayBeIssued = (joint: JointPlan): boolean => joint.verdict !== 'stop' || onlyWaits(joint);
