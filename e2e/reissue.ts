import { jobFolder } from '../packages/cli/src/job-folder.ts';
import { type JointPlan, planJob } from '../packages/core/src/index.ts';
import { readJob } from '../packages/papers/src/index.ts';
import { issuePlan } from '../packages/record/src/index.ts';
import { JOB, type Yard } from './yard.ts';

/** The planner issues the demo's plan anew, with joints changed; work begun under the one before goes on. */
export async function reissue(yard: Yard, number: string, change: (joint: JointPlan) => JointPlan): Promise<void> {
  const { device } = yard.office;
  const job = readJob(jobFolder('demo')).job!;
  const plan = planJob(job);
  const issue = issuePlan(job, { ...plan, joints: plan.joints.map(change) }, [], { number, jointId: yard.jointOf, earlier: 'continue' });
  for (const bytes of issue.attachments) await device.attach(JOB, bytes);
  for (const { kind, body } of issue.entries) await device.append(JOB, kind, body);
  await yard.sync();
}

/** The same joint with another setting in place of one of its own. */
export const withSetting = (joint: JointPlan, from: string, to: string): JointPlan =>
  JSON.parse(JSON.stringify(joint).replaceAll(from, to)) as JointPlan;
