import type { Job } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { compareTags } from './compare-tags.ts';
import { contextOf } from './context.ts';
import { effort } from './effort.ts';
import { merge } from './kit.ts';
import type { JointPlan, KitItem, Plan, Sums } from './plan.ts';
import { planJoint } from './plan-joint.ts';

/** Version of the engine, written into every plan. */
export const ENGINE = '0.1.0';

/**
 * Plans a job: for every joint a verdict with its reasons, target preload, torque, setting and end signal of each step,
 * sequence, reaction, kit and cautions. Pure: the same job gives the same plan, in whatever order its rows came; joints are
 * sorted by tag. A joint that cannot be planned is in the plan, with the reasons; it never keeps others from being planned.
 */
export function planJob(job: Job): Plan {
  const context = contextOf(job);
  const joints = job.joints.map((joint) => planJoint(context, joint)).sort((a, b) => compareTags(a.tag, b.tag));
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
