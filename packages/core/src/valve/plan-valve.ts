import { type SettingChart, settingText } from '../chart/setting-chart.ts';
import { type Notice, notice } from '../notice/index.ts';
import { torque } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Millimetre, NewtonMillimetre } from '../quantity.ts';
import {
  type GateLoad,
  PERSON,
  rimForce,
  type StemThread,
  stemFactor,
  stemLead,
  stemThrust,
  stemTorque,
  strokeWork,
  turnsOfStroke,
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
  readonly wheel?: Millimetre;
  /** greatest torque the owner allows on this stem */
  readonly ownerLimit?: NewtonMillimetre;
  /** operations' permission to move this valve now, and whose */
  readonly permission?: string;
  readonly chart: SettingChart;
  /** hot when shut, cold now, or the other way round */
  readonly thermalBinding?: boolean;
}

export interface ValvePlan {
  readonly verdict: 'stop' | 'by hand' | 'with the tool';
  readonly torque: NewtonMillimetre;
  readonly turns: number;
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
  'seat by hand',
  'not into the back-seat',
  'count turns',
  'rising stem',
  'position indicator watched',
  'arm clear of the wheel',
] as const;
export type ValveCaution = (typeof VALVE_CAUTIONS)[number];

/** Turns short of either end at which a tool stops; the rest is done by hand. Common practice, no source. */
export const STOP_SHORT_TURNS = 2;

/**
 * Whether a tool may turn a valve, and how. Stop unless the owner's torque limit, operations' permission and the opening direction are all
 * given: a stem that is bent shuts down a plant. The highest setting of the chart under the limit; often none, then by hand. Stops two
 * turns short of either end, never into the back-seat.
 *
 * Refuses dimensions and loads that are not above zero. Source of the torque: {@link stemThrust}, {@link stemFactor}.
 */
export function planValve(task: ValveTask): Outcome<ValvePlan> {
  const { tag, way, load, thread, stemFriction, stroke, wheel, ownerLimit, permission, opens, chart } = task;
  const lengths = [load.seat, load.stem, thread.outside, thread.pitch, thread.starts, stroke];
  if (!lengths.every((one) => one > 0) || !(load.valveFactor > 0) || !(stemFriction > 0) || !(load.packing >= 0))
    return refused(notice('valve-impossible', { tag }));
  const factor = stemFactor(thread, stemFriction);
  const needed = stemTorque(stemThrust(load, way), factor);
  const turns = turnsOfStroke(stroke, stemLead(thread));
  const notices: Notice[] = [
    ...(ownerLimit === undefined ? [notice('valve-limit-missing', { tag })] : []),
    ...(permission ? [] : [notice('valve-permission-missing', { tag })]),
    ...(opens ? [] : [notice('valve-direction-missing', { tag })]),
    ...(task.thermalBinding ? [notice('valve-thermal-binding', { tag })] : []),
  ];
  const over = ownerLimit !== undefined && needed > ownerLimit;
  if (over) notices.push(notice('valve-needs-more', { tag, needed: torque(needed), limit: torque(ownerLimit) }));
  const missing = ownerLimit === undefined || !permission || !opens;
  const usable = ownerLimit === undefined ? [] : chart.settings.filter((one) => !one.looseningOnly && one.torque <= ownerLimit);
  const best = usable.reduce<(typeof usable)[number] | undefined>(
    (most, one) => (most && most.torque >= one.torque ? most : one),
    undefined,
  );
  if (!missing && !over && !best) notices.push(notice('valve-by-hand', { tag, limit: torque(ownerLimit) }));
  const verdict = missing || over || task.thermalBinding ? 'stop' : best && turns > 2 * STOP_SHORT_TURNS ? 'with the tool' : 'by hand';
  return done({
    verdict,
    torque: needed,
    turns,
    stopAt: Math.max(0, turns - STOP_SHORT_TURNS),
    ...(best && verdict === 'with the tool'
      ? { setting: { text: settingText(chart, best.labels), labels: best.labels, torque: best.torque } }
      : {}),
    ...(wheel === undefined ? {} : { rim: rimForce(needed, wheel) }),
    person: (PERSON.force * PERSON.lever) as NewtonMillimetre,
    work: strokeWork({ running: needed, turns, seating: 0 as NewtonMillimetre, seatingTurns: 0 }),
    cautions: VALVE_CAUTIONS,
    notices,
  });
}
