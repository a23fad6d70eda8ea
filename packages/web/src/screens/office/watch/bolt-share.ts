import type { JointState } from '../../../job/joint-state.ts';

/** How far each bolt of a joint has come: share of its steps that are done, and whether something is wrong with it. */
export interface BoltShare {
  readonly share: number;
  readonly trouble: boolean;
}

/** Bolt by bolt, from the steps of the joint: a step is done where it is not open. */
export function boltShares({ joint, card, steps }: JointState): BoltShare[] {
  const open = steps.map((step) => new Set(step.open.flat()));
  return Array.from({ length: card?.boltCount ?? joint.plan?.slice.bolts ?? 0 }, (_, at) => {
    const bolt = joint.bolts.get(at + 1);
    const told = Object.keys(bolt?.steps ?? {}).length > 0;
    const done = open.filter((left) => !left.has(at + 1)).length;
    return {
      share: told && steps.length > 0 ? done / steps.length : 0,
      trouble: (bolt?.trouble.length ?? 0) > 0 || bolt?.inspections.at(-1)?.passed === false,
    };
  });
}
