import { hexagonFor } from '../fasteners/hexagon.ts';
import { isMetric, stressArea, type Thread } from '../fasteners/thread.ts';
import { jointCompliance } from '../interaction/joint-compliance.ts';
import type { Turn } from '../interaction/play.ts';
import type { Joint } from '../job/job.ts';
import { type MemberCompliance, memberCompliance } from '../members/member-compliance.ts';
import { STEEL } from '../members/members.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Millimetre } from '../quantity.ts';
import type { ScheduleTask } from '../schedule/schedule.ts';
import type { JointPlan, StepPlan, StepSetting, SubgroupPlan } from './plan.ts';
import { threadOf } from './resolve-bolt.ts';
import { synchronous } from './synchronous.ts';

/** The settings of a joint whose bolts are all alike and end at a set torque. */
interface FinalStep {
  readonly leads: readonly StepSetting[];
  readonly final: StepSetting;
  readonly subgroup: SubgroupPlan;
  readonly thread: Thread;
}

/** A joint whose bolts act on each other, ready to be played: what the rounds are made for, and what it was made from. */
export interface InteractionTask extends FinalStep {
  readonly task: ScheduleTask;
  readonly members: MemberCompliance;
}

/**
 * Compliance and target of one joint whose members are known. `undefined`: its bolts do not all end at one set torque, so that there is
 * nothing to play; refused: what is said of the members does not make a joint.
 */
export function interactionTask(joint: Joint, planned: JointPlan): Outcome<InteractionTask> | undefined {
  const asked = finalStep(planned);
  if (!asked || !joint.members) return undefined;
  const { thread, subgroup } = asked;
  const washer = bearing(thread, planned);
  if (!washer) return refused(notice('members-unknown', { what: 'the washer or bearing face of this size' }));
  const { layout, boltCount } = planned;
  const members = memberCompliance(joint.members, {
    count: boltCount,
    diameter: thread.diameter,
    ...washer,
    ...(layout.kind === 'group' ? { places: layout.bolts } : layout.circle === undefined ? {} : { circle: layout.circle }),
  });
  if (!members.ok) return members;
  const clamp = subgroup.clampThickness ?? members.value.clampThickness;
  if (clamp === undefined) return refused(notice('members-unknown', { what: 'the clamped thickness' }));
  const compliance = jointCompliance(members.value.rows, boltResilienceOf(thread, clamp));
  if (!compliance.ok) return compliance;
  if (compliance.value.size !== boltCount) return refused(notice('compliance-not-square', { bolts: boltCount }));
  const zeroBased = (list: readonly (readonly number[])[]): Turn[] => list.map((bolts) => bolts.map((bolt) => bolt - 1));
  const task: ScheduleTask = {
    compliance: compliance.value,
    gasketSet: members.value.gasketSet,
    target: asked.final.preload,
    star: zeroBased(planned.sequence.list),
    circular: zeroBased(synchronous(planned)),
  };
  return done({ ...asked, task, members: members.value });
}

/** Joints that end at an angle or a spline have no such step. */
function finalStep({ subgroups }: JointPlan): FinalStep | undefined {
  const [subgroup] = subgroups;
  if (!subgroup?.tightening || subgroups.length !== 1) return undefined;
  const inSequence = subgroup.tightening.steps.filter(({ order, end }) => order === 'sequence' && end.kind !== 'firm contact');
  const settings = inSequence.map(({ setting }: StepPlan) => setting);
  const final = settings.at(-1);
  const thread = threadOf(subgroup.size);
  if (!final || !thread || settings.some((setting) => setting === undefined)) return undefined;
  return { leads: (settings as StepSetting[]).slice(0, -1), final, subgroup, thread };
}

const PRODUCTS = { HR: 'HR', HV: 'HV', HRC: 'HR', plain: 'ISO' } as const;

function bearing(thread: Thread, { subgroups }: JointPlan): { readonly hole: Millimetre; readonly washer: Millimetre } | undefined {
  const system = subgroups[0]!.system as keyof typeof PRODUCTS;
  const found = hexagonFor(thread, isMetric(thread) ? PRODUCTS[system] : 'heavy-hex');
  if (!found.ok) return undefined;
  const { hole, washerOuter, bearingFace, acrossFlats } = found.value;
  const washer = washerOuter ?? bearingFace ?? acrossFlats;
  return hole === undefined ? undefined : { hole, washer };
}

/** Clamp length and 0.8·d at the stress area, as in the finite-element joints this model is held against. */
const boltResilienceOf = (thread: Thread, clamp: Millimetre): number =>
  (clamp + 0.8 * thread.diameter) / (STEEL.modulus * stressArea(thread.diameter, thread.pitch));
