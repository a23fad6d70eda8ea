import { type DrawnSample, drawSample } from '../inspection/draw-sample.ts';
import { type InspectionRecord, inspectionRecord, type LookedAt } from '../inspection/inspection-record.ts';
import type { Notice } from '../notice/index.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { JointPlan, Plan } from './plan.ts';

/**
 * Bolts of a plan to inspect: as many as rule sets and execution class ask for, or `size`; joints that stop are left out, and so are those
 * of which nobody asks a sample. Refuses a job that asks for none.
 */
export function drawForPlan(plan: Plan, seed: number, size?: number): Outcome<DrawnSample> {
  const sampled = sampledJoints(plan, size);
  if (sampled.length === 0) return refused(notice('sample-none', {}));
  const asked = size ?? sampled.reduce((sum, { inspection }) => sum + (inspection?.sample ?? 0), 0);
  return drawSample(
    sampled.map(({ tag, boltCount }) => ({ tag, bolts: boltCount })),
    asked,
    seed,
  );
}

const sampledJoints = ({ joints }: Plan, size: number | undefined): JointPlan[] =>
  joints.filter(({ inspection, verdict }) => verdict !== 'stop' && (size !== undefined || (inspection?.sample ?? 0) > 0));

/** What an inspector found, held against the draw: one record for each method, since each is looked at in its own way. */
export function inspectPlan(
  plan: Plan,
  of: { readonly seed: number; readonly size?: number; readonly wrench?: string; readonly looked: readonly LookedAt[] },
): Outcome<readonly InspectionRecord[]> {
  const drawn = drawForPlan(plan, of.seed, of.size);
  if (!drawn.ok) return drawn;
  const byTag = new Map(plan.joints.map((joint) => [joint.tag, joint]));
  const unknown = of.looked.filter(({ joint }) => !drawn.value.joints.some(({ tag }) => tag === joint));
  const faults: Notice[] = unknown.map(({ joint, bolt }) => notice('inspected-not-drawn', { joint, bolt }));
  const methods = new Map<string, JointPlan[]>();
  for (const { tag } of drawn.value.joints) {
    const joint = byTag.get(tag)!;
    methods.set(joint.inspection!.method, [...(methods.get(joint.inspection!.method) ?? []), joint]);
  }
  const records = [...methods.values()].flatMap((joints) => {
    const tags = new Set(joints.map(({ tag }) => tag));
    const { inspection } = joints[0]!;
    const own = drawn.value.joints.filter(({ tag }) => tags.has(tag));
    const record = inspectionRecord({
      drawn: { ...drawn.value, joints: own, size: own.reduce((sum, { bolts }) => sum + bolts.length, 0) },
      population: joints.reduce((sum, { boltCount }) => sum + boltCount, 0),
      inspection: inspection!,
      looked: of.looked.filter(({ joint }) => tags.has(joint)),
      tightenedWith: joints.flatMap(toolsOf),
      ...(of.wrench !== undefined && inspection!.torqueProves ? { wrench: of.wrench } : {}),
    });
    if (record.ok) return [record.value];
    faults.push(...record.notices);
    return [];
  });
  return faults.length > 0 ? refused(...faults) : done(records);
}

const toolsOf = ({ subgroups }: JointPlan): string[] =>
  subgroups.flatMap(({ tightening }) => tightening?.steps.flatMap(({ setting }) => setting?.tool ?? []) ?? []);
