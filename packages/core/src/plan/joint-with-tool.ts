import type { CivilDate } from '../date.ts';
import type { Job, Tool } from '../job/job.ts';
import { contextOf } from './context.ts';
import type { JointPlan } from './plan.ts';
import { planJoint } from './plan-joint.ts';

/**
 * One joint planned again for one tool alone, as on site when a tool fails and another takes over: settings from the chart of that tool,
 * calibration judged on the day `on`, reaction, sockets and permits as for any joint. The tool need not be one of the job's; one of the
 * same serial number takes its place. `undefined`: the job has no such joint.
 *
 * @example
 * const job = { joints: [], tools: [], lots: [] };
 * expect(jointWithTool(job, 'FB-S1', { serial: 'SK-B117' }, '2026-11-28')).toBe(undefined);
 */
export function jointWithTool(job: Job, tag: string, tool: Tool, on: CivilDate): JointPlan | undefined {
  const joint = job.joints.find((one) => one.tag === tag);
  if (!joint) return undefined;
  const tools = [...job.tools.filter(({ serial }) => serial !== tool.serial), tool];
  return planJoint(contextOf({ ...job, workDate: on, tools }), { ...joint, tools: [tool.serial] });
}
