import { usableEnergy } from '../battery/battery.ts';
import { chargeMinutes, planSupply } from '../battery/supply.ts';
import { shareOut } from '../duration/joint-time.ts';
import type { Job } from '../job/job.ts';
import type { JointPlan, Sums } from './plan.ts';

/** Hours of a shift where nobody says otherwise. */
const SHIFT_MINUTES = 480;
const WATT_HOUR = 3600;

/** Time, energy, batteries and crews of the joints that may be tightened. */
export function effort(job: Job, joints: readonly JointPlan[]): Pick<Sums, 'minutes' | 'energy' | 'supply' | 'crews'> {
  const todo = joints.flatMap(({ tag, verdict, work }) => (work && verdict !== 'stop' ? [{ tag, ...work }] : []));
  const minutes = todo.reduce((sum, work) => sum + work.minutes, 0);
  const supply = supplyOf(job, todo, minutes);
  return {
    minutes,
    energy: todo.reduce((sum, { energy }) => sum + energy, 0),
    ...(supply ? { supply } : {}),
    crews: shareOut(todo, job.crews ?? 1, job.shiftMinutes ?? SHIFT_MINUTES),
  };
}

/** Batteries as they are today; those whose label or gauge makes no sense are left out of the count. */
function supplyOf(
  { batteries = [], charger }: Job,
  todo: readonly { readonly tag: string; readonly draw?: number }[],
  minutes: number,
): Sums['supply'] {
  const full = batteries.flatMap((battery) => {
    const energy = usableEnergy(battery);
    return energy.ok ? [energy.value] : [];
  });
  const joints = todo.flatMap(({ tag, draw }) => (draw === undefined ? [] : [{ tag, energy: draw }]));
  if (full.length === 0 || joints.length === 0) return undefined;
  const mean = full.reduce((sum, energy) => sum + energy, 0) / full.length;
  const charge = charger ? chargeMinutes(mean / WATT_HOUR, charger.watts, charger.taperMinutes) : minutes;
  return planSupply({ joints, full: mean, minutes, charge, owned: full.length });
}
