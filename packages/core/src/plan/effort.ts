import { gaugeInterval, usableEnergy } from '../battery/battery.ts';
import { type BatteryAtHand, type Pull, sharePulls } from '../battery/share-pulls.ts';
import { unlearntDraw } from '../battery/still-does.ts';
import { chargeMinutes } from '../battery/supply.ts';
import { shareOut } from '../duration/joint-time.ts';
import type { Job } from '../job/job.ts';
import { compareTags } from './compare-tags.ts';
import type { JointPlan, Sums } from './plan.ts';
import type { WorkPlan } from './work-plan.ts';

/** Which battery goes when, how many more a day takes, and how many chargers keep up. */
export interface SupplyPlan {
  /** J the batteries give for the joints that may be tightened */
  readonly draw: number;
  /** in the order they are used: pulls each is trusted with, the joints they belong to, and the chance that it does them all */
  readonly turns: readonly {
    readonly serial: string;
    readonly pulls: number;
    readonly joints: readonly string[];
    readonly chance: number;
  }[];
  /** full batteries like the largest at hand that the rest would take; `null`: no such battery does a single pull */
  readonly more: number | null;
  /** chargers that fill those while the crew works; 0 where none is needed or nobody says how fast they charge */
  readonly chargers: number;
  /** joints that are not covered in all their steps: not to be begun */
  readonly notToBegin: readonly string[];
}

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

/** The joint that draws most a pull goes first, with the fullest battery. Batteries whose label or gauge makes no sense are left out. */
function supplyOf(
  { batteries = [], charger }: Job,
  todo: readonly (WorkPlan & { readonly tag: string })[],
  minutes: number,
): Sums['supply'] {
  const atHand = batteries.flatMap((battery): BatteryAtHand[] => {
    const full = usableEnergy(battery);
    if (!full.ok) return [];
    const { low, high } = gaugeInterval(battery.lit);
    return [{ serial: battery.serial, full: full.value, low: low * full.value, high: high * full.value }];
  });
  const drawn = todo
    .flatMap(({ tag, pulls, draw }) => (draw === undefined ? [] : [{ tag, pulls, draw, each: draw / pulls }]))
    .sort((a, b) => b.each - a.each || compareTags(a.tag, b.tag));
  const draw = drawn.reduce((sum, one) => sum + one.draw, 0);
  if (atHand.length === 0 || drawn.length === 0) return undefined;
  const mean = draw / drawn.reduce((sum, { pulls }) => sum + pulls, 0);
  const pulls = drawn.flatMap(({ tag, pulls: count, each }) =>
    Array.from({ length: count }, (_, at): Pull => ({ joint: tag, bolt: at + 1, step: '', weight: each / mean })),
  );
  const shared = sharePulls(pulls, atHand, unlearntDraw(mean), 0);
  if (!shared.ok) return undefined;
  const { turns, more, notToBegin } = shared.value;
  const largest = Math.max(...atHand.map(({ full }) => full));
  const charging = charger && Number.isFinite(more) ? more * chargeMinutes(largest / WATT_HOUR, charger.watts, charger.taperMinutes) : 0;
  return {
    draw,
    turns: turns.map(({ serial, pulls: own, chance }) => ({
      serial,
      pulls: own.length,
      joints: [...new Set(own.map(({ joint }) => joint))],
      chance,
    })),
    more: Number.isFinite(more) ? more : null,
    chargers: Math.ceil(charging / Math.max(minutes, 1)),
    notToBegin,
  };
}
