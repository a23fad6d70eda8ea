import { currentStep, taskOf } from '../../job/next-bolt.ts';
import type { OpenJoint } from '../../job/open-joint.ts';

/** The tool that the plan gives this bolt in the step in hand, and the one that has it now. */
export function plannedTool({ joint, card, steps }: OpenJoint, bolt: number): { readonly from: string; readonly now: string } | undefined {
  const step = currentStep(steps)?.step;
  const task = step === undefined ? undefined : taskOf(joint, card, bolt, step);
  const from = task?.plan.setting?.tool;
  return from === undefined ? undefined : { from, now: task?.tool ?? from };
}
