import type { Job } from '../job/job.ts';

/**
 * The job with other tools for one joint, everything else as it was: plan it again for the settings of another loaded chart, as on site
 * when a tool fails. `undefined`: no such joint. A serial number that no tool of the job has is said by the plan.
 */
export function swapTool(job: Job, tag: string, serials: readonly string[]): Job | undefined {
  if (!job.joints.some((joint) => joint.tag === tag)) return undefined;
  return { ...job, joints: job.joints.map((joint) => (joint.tag === tag ? { ...joint, tools: serials } : joint)) };
}
