import type { Battery } from '../battery/battery.ts';
import { gaugeInterval } from '../battery/battery.ts';
import { pushes } from '../battery/push.ts';
import type { Tool } from '../job/job.ts';
import type { Notice } from '../notice/index.ts';
import type { Context } from './context.ts';
import type { StepPlan } from './plan.ts';

/**
 * A step whose torque no battery at hand can push at its temperature and charge is a stop before the bolt, not after it. Judged only where
 * the tool's peak draw and a battery's cells are entered; the battery that comes nearest speaks for all.
 */
export function pushNotices({ job, toolBySerial }: Context, steps: readonly StepPlan[]): Notice[] {
  const known = (job.batteries ?? []).filter(({ cells }) => cells);
  if (known.length === 0) return [];
  return steps.flatMap(({ setting }) => {
    const tool = setting && toolBySerial.get(setting.tool)?.tool;
    return setting && tool?.peak ? weakest(known, tool.peak, setting.torque) : [];
  });
}

function weakest(batteries: readonly Battery[], peak: NonNullable<Tool['peak']>, torque: Parameters<typeof pushes>[2]): Notice[] {
  const told = batteries.map(({ serial, cells, lit, temperature }) =>
    pushes({ serial, cells: cells!, temperature, charge: gaugeInterval(lit).low }, peak, torque),
  );
  const refusals = told.flatMap((one) => (one.ok ? [] : one.notices));
  return told.every((one) => !one.ok) ? refusals.slice(0, 1) : [];
}
