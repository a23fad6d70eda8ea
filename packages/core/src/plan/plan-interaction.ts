import type { Job, Joint } from '../job/job.ts';
import { levelOf } from '../notice/index.ts';
import { interactionTask } from './interaction-task.ts';
import { type JointRounds, jointRounds } from './joint-rounds.ts';
import type { JointPlan, Plan } from './plan.ts';
import { sumsOf } from './plan-job.ts';
import { workOfRounds } from './work-plan.ts';

/** Rounds by kind of joint, kept from one planning to the next where somebody plans while typing. */
export type RoundsMemory = Map<string, JointRounds>;

/**
 * Adds to a plan how the bolts of each joint act on each other, where its members are known: a stage of its own, since it takes
 * 0.1 to 5 s a joint. Joints of one kind are computed once. `progress`: called with each joint done.
 */
export function planInteraction(job: Job, plan: Plan, progress: (done: number, of: number) => void = () => undefined): Plan {
  const memory: RoundsMemory = new Map();
  const known = kindsOf(job, plan);
  for (const [at, { kind, joint, planned }] of known.entries()) {
    if (!memory.has(kind)) memory.set(kind, roundsOf(job, joint, planned));
    progress(at + 1, known.length);
  }
  return withRounds(job, plan, memory);
}

/** The plan with the rounds that a memory has; other joints stay as they are. */
export function withRounds(job: Job, plan: Plan, memory: RoundsMemory): Plan {
  const told = new Map(kindsOf(job, plan).map(({ kind, planned }) => [planned.tag, memory.get(kind)]));
  if (told.size === 0) return plan;
  const joints = plan.joints.map((joint) => withInteraction(joint, told.get(joint.tag)));
  return { ...plan, joints, sums: sumsOf(job, joints) };
}

/** A joint whose rounds are not known yet. */
export interface WantedRounds {
  readonly kind: string;
  readonly joint: Joint;
  readonly planned: JointPlan;
}

/** What a memory lacks for a plan: one joint of each kind. Whoever computes them elsewhere keeps them under their kind. */
export const wantedRounds = (job: Job, plan: Plan, memory: RoundsMemory): WantedRounds[] => [
  ...new Map(kindsOf(job, plan).flatMap((one) => (memory.has(one.kind) ? [] : [[one.kind, one] as const]))).values(),
];

/** Every joint whose members are known, with its kind. */
function kindsOf(job: Job, plan: Plan): WantedRounds[] {
  const byTag = new Map(job.joints.map((joint) => [joint.tag, joint]));
  return plan.joints.flatMap((planned) => {
    const joint = byTag.get(planned.tag);
    return joint?.members ? [{ kind: roundsKind(job, joint, planned), joint, planned }] : [];
  });
}

/** A schedule of several settings is made from the tool's whole chart as well. */
function roundsKind(job: Job, joint: Joint, planned: JointPlan): string {
  const tools = new Set(
    planned.subgroups.flatMap(({ tightening }) => tightening?.steps.flatMap(({ setting }) => setting?.tool ?? []) ?? []),
  );
  const charts =
    joint.greatestForce === undefined ? [] : job.tools.filter(({ serial }) => tools.has(serial)).map(({ chart }) => chart.settings);
  return `${jointKind(joint, planned)}${charts.length > 0 ? JSON.stringify(charts) : ''}`;
}

/** Joints of one kind answer alike: what decides how the bolts act on each other, and the rounds. */
export const jointKind = (joint: Joint, { rule, layout, subgroups, sequence }: JointPlan): string =>
  JSON.stringify([joint.members, joint.evenness, joint.greatestForce, rule.id, layout, subgroups, sequence.list]);

function withInteraction(joint: JointPlan, told: JointRounds | undefined): JointPlan {
  if (!told) return joint;
  const stops = told.notices.some(({ code }) => levelOf(code) !== 'attention');
  const attention = told.notices.length > 0 && joint.verdict === 'ready' ? 'attention' : joint.verdict;
  return {
    ...joint,
    verdict: stops ? 'stop' : attention,
    reasons: [...joint.reasons, ...told.notices],
    ...(told.interaction ? { interaction: told.interaction } : {}),
    ...(told.interaction && joint.work ? { work: workOfRounds(joint.work, told.interaction) } : {}),
  };
}

/** The rounds of one joint, beside custom. */
export function roundsOf(job: Job, joint: Joint, planned: JointPlan): JointRounds {
  const task = interactionTask(joint, planned);
  if (!task) return { notices: [] };
  return task.ok ? jointRounds(job, joint, planned, task.value) : { notices: task.notices };
}
