import type { ToolKind } from '../chart/setting-chart.ts';
import type { Joint } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import type { Context } from './context.ts';
import type { StepPlan } from './plan.ts';

/** Tools with a motor or a battery are ignition sources. */
const IGNITION: Readonly<Record<ToolKind, boolean>> = {
  battery: true,
  electric: true,
  pneumatic: false,
  hydraulic: false,
  'torque multiplier': false,
  'click wrench': false,
};

/** Papers that must be there before anybody starts; a missing one holds the joint. */
export function permitNotices(context: Context, joint: Joint, steps: readonly StepPlan[]): Notice[] {
  const notices: Notice[] = [];
  if (joint.pressure && joint.permit === undefined) notices.push(notice('permit-missing', {}, joint.place));
  const zone = joint.zone ?? context.job.conditions.zone;
  if (zone === undefined) notices.push(notice('zone-missing', {}, joint.place));
  else if (zone !== 'none' && (joint.hotWorkPermit === undefined || joint.gasTest === undefined)) {
    const serials = new Set(steps.flatMap(({ setting }) => (setting ? [setting.tool] : [])));
    for (const serial of serials) {
      const kind = context.toolBySerial.get(serial)?.tool.kind;
      if (kind && IGNITION[kind]) notices.push(notice('hot-work-missing', { zone, tool: serial }, joint.place));
    }
  }
  if (context.job.conditions.wet) notices.push(notice('wet-retest', {}));
  if (!joint.datum) notices.push(notice('datum-missing', {}, joint.place));
  return notices;
}
