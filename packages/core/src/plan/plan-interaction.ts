import type { Job, Joint } from '../job/job.ts';
import { levelOf } from '../notice/index.ts';
import { interactionTask } from './interaction-task.ts';
import { type JointRounds, jointRounds } from './joint-rounds.ts';
import type { JointPlan, Plan } from './plan.ts';
import { sumsOf } from './plan-job.ts';
import { workOfRounds } from './work-plan.ts';

/**
 * Adds to a plan how the bolts of each joint act on each other, where its members are known: a stage of its own, since it takes
 * 0.1 to 5 s a joint. Joints of one kind are computed once. `progress`: called with each joint done.
 */
export function planInteraction(job: Job, plan: Plan, progress: (done: number, of: number) => void = () => undefined): Plan {
  const byTag = new Map(job.joints.map((joint) => [joint.tag, joint]));
  const known = plan.joints.filter(({ tag }) => byTag.get(tag)?.members);
  const memory = new Map<string, JointRounds>();
  let done = 0;
  const told = new Map(
    known.map((planned) => {
      const joint = byTag.get(planned.tag)!;
      const key = jointKind(joint, planned);
      const found = memory.get(key) ?? roundsOf(job, joint, planned);
      memory.set(key, found);
      done += 1;
      progress(done, known.length);
      return [planned.tag, found] as const;
    }),
  );
  const joints = plan.joints.map((joint) => withInteraction(joint, told.get(joint.tag)));
  return { ...plan, joints, sums: sumsOf(job, joints) };
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

function roundsOf(job: Job, joint: Joint, planned: JointPlan): JointRounds {
  const task = interactionTask(joint, planned);
  if (!task) return { notices: [] };
  return task.ok ? jointRounds(job, joint, planned, task.value) : { notices: task.notices };
}
