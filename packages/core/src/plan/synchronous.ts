import type { JointPlan } from './plan.ts';

/** Bolt by bolt by number, or as many at once as the sequence has. */
export function synchronous({ boltCount, sequence }: Pick<JointPlan, 'boltCount' | 'sequence'>): readonly (readonly number[])[] {
  const tools = sequence.list[0]?.length ?? 1;
  const turns = boltCount / tools;
  return Array.from({ length: turns }, (_, i) => Array.from({ length: tools }, (__, k) => 1 + i + k * turns));
}
