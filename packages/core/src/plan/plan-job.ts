import type { Job, Joint } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { compareTags } from './compare-tags.ts';
import { contextOf } from './context.ts';
import { effort } from './effort.ts';
import { merge } from './kit.ts';
import type { JointPlan, KitItem, Plan, Sums } from './plan.ts';
import { planJoint } from './plan-joint.ts';

/** Version of the engine, written into every plan. */
export const ENGINE = '0.1.0';

/** Joints as they were planned last, for whoever plans again while typing: a joint is planned anew only where it or the job around it changed. */
export interface JointMemory {
  /** the job without its joints */
  around: string;
  joints: Map<string, JointPlan>;
}
export const jointMemory = (): JointMemory => ({ around: '', joints: new Map() });

/**
 * Plans a job: for every joint a verdict with its reasons, target preload, torque, setting and end signal of each step,
 * sequence, reaction, kit and cautions. Pure: the same job gives the same plan, in whatever order its rows came; joints are
 * sorted by tag. A joint that cannot be planned is in the plan, with the reasons; it never keeps others from being planned.
 */
export function planJob(job: Job, memory?: JointMemory): Plan {
  const context = contextOf(job);
  const plan = memory ? remembered(job, memory, (joint) => planJoint(context, joint)) : (joint: Joint) => planJoint(context, joint);
  const joints = job.joints.map(plan).sort((a, b) => compareTags(a.tag, b.tag));
  return {
    format: 'clampwright-plan',
    version: 1,
    engine: ENGINE,
    job: {
      title: job.title,
      site: job.site,
      workDate: job.workDate,
      units: job.units,
      people: job.people.map(({ name, role }) => ({ name, role })),
    },
    joints,
    tools: context.tools.map(({ tool, notices }) => ({
      serial: tool.serial,
      name: tool.name,
      kind: tool.kind,
      certificate: tool.chart.certificate.number,
      due: tool.chart.certificate.due,
      notices,
    })),
    reasons: peopleNotices(job),
    sums: sumsOf(job, joints),
  };
}

/** Plans a joint, or takes it as it was planned before; what is no longer asked for is forgotten. */
function remembered(job: Job, memory: JointMemory, plan: (joint: Joint) => JointPlan): (joint: Joint) => JointPlan {
  const around = JSON.stringify({ ...job, joints: [] });
  const before = memory.around === around ? memory.joints : new Map<string, JointPlan>();
  memory.around = around;
  memory.joints = new Map();
  return (joint) => {
    const key = JSON.stringify(joint);
    const planned = before.get(key) ?? plan(joint);
    memory.joints.set(key, planned);
    return planned;
  };
}

function peopleNotices({ people, workDate }: Job): Notice[] {
  return people.flatMap(({ name, qualifiedUntil }) =>
    qualifiedUntil !== undefined && qualifiedUntil < workDate
      ? [notice('qualification-expired', { person: name, until: qualifiedUntil })]
      : [],
  );
}

/** Sums of a job; made again when rounds change what joints take. */
export function sumsOf(job: Job, joints: readonly JointPlan[]): Sums {
  const count = (verdict: JointPlan['verdict']) => joints.filter((joint) => joint.verdict === verdict).length;
  const kit: KitItem[] = merge(
    joints.flatMap((joint) => joint.kit),
    ({ kind }) => kind === 'bolt',
  );
  return {
    joints: joints.length,
    bolts: joints.reduce((sum, { boltCount }) => sum + boltCount, 0),
    ready: count('ready'),
    attention: count('attention'),
    stop: count('stop'),
    kit,
    ...effort(job, joints),
  };
}
