import { type SettingChart, settingText } from '../chart/setting-chart.ts';
import { levelOf, type Notice, notice } from '../notice/index.ts';
import { stress, torque } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Megapascal, type Millimetre, MPa, type NewtonMillimetre } from '../quantity.ts';
import {
  type GateLoad,
  movingTorque,
  PERSON,
  rimForce,
  type StemThread,
  stemLead,
  stemStress,
  stemThrust,
  strokeWork,
  turnsOfStroke,
  waterworksTurns,
} from './stem.ts';

/** A gate valve that is to be opened or shut with a tool. */
export interface ValveTask {
  readonly tag: string;
  readonly way: 'opening' | 'closing';
  /** which way the wheel turns to open, seen on it; some open clockwise */
  readonly opens?: 'clockwise' | 'counter-clockwise';
  readonly load: GateLoad;
  readonly thread: StemThread;
  readonly stemFriction: number;
  readonly stroke: Millimetre;
  /** nominal size of a waterworks gate valve, in: its turns are held against the rule for such valves */
  readonly waterworksInches?: number;
  readonly wheel?: Millimetre;
  /** greatest torque the owner allows on this stem */
  readonly ownerLimit?: NewtonMillimetre;
  /** operations' permission to move this valve now, and whose */
  readonly permission?: string;
  readonly chart: SettingChart;
  /** worst valve factor and stem friction to be thought of, beside the usual ones above */
  readonly worst?: { readonly valveFactor: number; readonly stemFriction: number };
  /** root of the stem and its yield strength, where known */
  readonly stem?: { readonly root: Millimetre; readonly yield: Megapascal };
  /** hot when shut, cold now, or the other way round */
  readonly thermalBinding?: boolean;
  /** not moved for years */
  readonly longUnmoved?: boolean;
}

export interface ValvePlan {
  readonly verdict: 'stop' | 'by hand' | 'with the tool';
  readonly torque: NewtonMillimetre;
  /** with the worst factors, where they are given */
  readonly worstTorque?: NewtonMillimetre;
  readonly turns: number;
  /** turns the tool may make: the first and the last of a stroke belong to the hand */
  readonly toolTurns: number;
  /** turns after which the tool is taken off and the wheel finished by hand */
  readonly stopAt: number;
  readonly setting?: { readonly text: string; readonly labels: readonly string[]; readonly torque: NewtonMillimetre };
  /** force at the rim for the same torque; a person gives about {@link PERSON} */
  readonly rim?: number;
  readonly person: NewtonMillimetre;
  readonly work: number;
  readonly cautions: readonly ValveCaution[];
  readonly notices: readonly Notice[];
}

/** Said with every valve that a tool turns. */
export const VALVE_CAUTIONS = [
  'first pull opens',
  'seat by hand',
  'not into the back-seat',
  'count turns',
  'rising stem',
  'position indicator watched',
  'arm clear of the wheel',
] as const;
export type ValveCaution = (typeof VALVE_CAUTIONS)[number];

/** Shear stress at yield over tensile yield: 1/√3, distortion energy. */
const SHEAR_AT_YIELD = 1 / Math.sqrt(3);

/** Turns short of either end at which a tool stops; the rest is done by hand. Common practice, no source. */
export const STOP_SHORT_TURNS = 2;

/**
 * Whether a tool may turn a valve, and how. Stop unless the owner's torque limit, operations' permission and the opening direction are all
 * given: a stem that is bent shuts down a plant; and where the limit itself would yield the stem. The highest setting of the chart that stays
 * under the limit with the tool's repeatability and the chart's uncertainty; often none, then by hand. Stops two turns short of either end,
 * never into the back-seat. A valve that may need more than the limit is tried at the limit and no further.
 *
 * Refuses dimensions that are not above zero, loads below zero and threads that cannot be. Source of the torque: {@link stemThrust},
 * {@link movingTorque}.
 */
export function planValve(task: ValveTask): Outcome<ValvePlan> {
  const { tag, way, load, thread, stemFriction, stroke, wheel, ownerLimit, permission, opens, worst } = task;
  if (!isValve(task)) return refused(notice('valve-impossible', { tag }));
  const needed = movingTorque(stemThrust(load, way), thread, stemFriction);
  const worstTorque = worst && movingTorque(stemThrust({ ...load, valveFactor: worst.valveFactor }, way), thread, worst.stemFriction);
  const turns = turnsOfStroke(stroke, stemLead(thread));
  const toolTurns = Math.max(0, turns - 2 * STOP_SHORT_TURNS);
  const best = ownerLimit === undefined ? undefined : highestUnder(task.chart, ownerLimit);
  const notices: Notice[] = [
    ...(ownerLimit === undefined ? [notice('valve-limit-missing', { tag })] : []),
    ...(permission ? [] : [notice('valve-permission-missing', { tag })]),
    ...(opens ? [] : [notice('valve-direction-missing', { tag })]),
    ...(task.thermalBinding ? [notice('valve-thermal-binding', { tag })] : []),
    ...(ownerLimit === undefined ? [] : limitNotices(task, ownerLimit, needed, worstTorque)),
    ...turnNotices(task, turns, toolTurns),
    ...(task.longUnmoved ? [notice('valve-long-unmoved', { tag })] : []),
  ];
  // whatever waits for a paper or a person stops a tool, too: limit, permission, direction, a doubtful count of turns
  const stopped = notices.some(({ code }) => ['stop', 'hold'].includes(levelOf(code)));
  if (!stopped && !best && ownerLimit !== undefined) notices.push(notice('valve-by-hand', { tag, limit: torque(ownerLimit) }));
  const verdict = stopped ? 'stop' : best && toolTurns > 0 ? 'with the tool' : 'by hand';
  return done({
    verdict,
    torque: needed,
    ...(worstTorque === undefined ? {} : { worstTorque }),
    turns,
    toolTurns,
    stopAt: Math.max(0, turns - STOP_SHORT_TURNS),
    ...(best && verdict === 'with the tool' ? { setting: best } : {}),
    ...(wheel === undefined ? {} : { rim: rimForce(needed, wheel) }),
    person: (PERSON.force * PERSON.lever) as NewtonMillimetre,
    work: strokeWork({ running: needed, turns, seating: 0 as NewtonMillimetre, seatingTurns: 0 }),
    cautions: VALVE_CAUTIONS,
    notices,
  });
}

/** A count of turns that is wrong by more drives the gate into its seat or back-seat with power: the turns a tool stops short. */
function turnNotices({ tag, waterworksInches }: ValveTask, turns: number, toolTurns: number): Notice[] {
  const counted = { tag, turns: Math.round(10 * turns) / 10 };
  const rule = waterworksInches === undefined ? undefined : waterworksTurns(waterworksInches);
  const differs = rule && (turns < rule.low - STOP_SHORT_TURNS || turns > rule.high + STOP_SHORT_TURNS);
  return [
    ...(differs ? [notice('valve-turns-differ', { ...counted, ...rule })] : []),
    ...(toolTurns > 0 ? [] : [notice('valve-few-turns', counted)]),
  ];
}

/** Above this a stem and its nut would seize; the power-screw relation has no torque left near 1/tan λ. Own limit. */
const MOST_FRICTION = 1;

function isValve({ load, thread, stemFriction, stroke, wheel, ownerLimit, stem, worst, waterworksInches }: ValveTask): boolean {
  const positive = [load.seat, load.stem, load.valveFactor, thread.outside, thread.pitch, thread.starts, stemFriction, stroke];
  const given = [wheel, ownerLimit, stem?.root, stem?.yield, worst?.valveFactor, worst?.stemFriction, waterworksInches];
  const loads = [load.differential, load.line, load.packing];
  const isThread = thread.pitch < thread.outside && thread.halfAngle >= 0 && thread.halfAngle < Math.PI / 4;
  return (
    positive.every((one) => one > 0 && Number.isFinite(one)) &&
    given.every((one) => one === undefined || (one > 0 && Number.isFinite(one))) &&
    loads.every((one) => one >= 0 && Number.isFinite(one)) &&
    isThread &&
    Math.max(stemFriction, worst?.stemFriction ?? 0) <= MOST_FRICTION
  );
}

/** A setting lies under a limit when its torque with repeatability and uncertainty does. */
function highestUnder(chart: SettingChart, limit: NewtonMillimetre): ValvePlan['setting'] {
  const scatter = 1 + Math.hypot(chart.repeatability, chart.certificate.uncertainty);
  const usable = chart.settings.filter((one) => !one.looseningOnly && one.torque * scatter <= limit);
  const best = usable.reduce<(typeof usable)[number] | undefined>(
    (most, one) => (most && most.torque >= one.torque ? most : one),
    undefined,
  );
  return best && { text: settingText(chart, best.labels), labels: best.labels, torque: best.torque };
}

/** What the owner's limit says against moving the valve. */
function limitNotices(
  { tag, stem }: ValveTask,
  limit: NewtonMillimetre,
  needed: NewtonMillimetre,
  worst: NewtonMillimetre | undefined,
): Notice[] {
  const notices: Notice[] = [];
  if (needed > limit) notices.push(notice('valve-needs-more', { tag, needed: torque(needed), limit: torque(limit) }));
  else if (worst !== undefined && worst > limit)
    notices.push(notice('valve-may-need-more', { tag, needed: torque(worst), limit: torque(limit) }));
  if (!stem) return notices;
  const [found, allowed] = [stemStress(limit, stem.root), MPa(SHEAR_AT_YIELD * stem.yield)];
  return found > allowed ? [...notices, notice('valve-stem-yields', { tag, found: stress(found), allowed: stress(allowed) })] : notices;
}
