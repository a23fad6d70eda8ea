import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { between } from './between.ts';

/** Cells of a battery: how they are wired, and the resistance of one at 25 °C, Ω. */
export interface Cells {
  readonly series: number;
  readonly parallel: number;
  readonly resistance: number;
}

/** A battery as it is labelled and as it is today. */
export interface Battery {
  readonly serial: string;
  /** rated, V and Ah */
  readonly volts: number;
  readonly ampereHours: number;
  /** share of its rated energy that is left after its cycles, 1 when new */
  readonly health: number;
  /** °C of the cells, not of the air */
  readonly temperature: number;
  /** segments of the gauge that are lit, of four */
  readonly lit: 0 | 1 | 2 | 3 | 4;
  /** how its cells are wired, where the sag under peak torque is to be judged */
  readonly cells?: Cells;
  /** delivered part-charged: charge it fully before its first work */
  readonly neverCharged?: boolean;
}

const WATT_HOUR = 3600;
/** Share of the rated energy that a tool uses before it cuts off. Own estimate. */
export const USABLE_SHARE = 0.9;
/** °C in which lithium-ion cells may work and be charged. Source: battery guides (generic limits), published. */
export const TEMPERATURES = { work: { low: -20, high: 60 }, charge: { low: 0, high: 45 } } as const;

/** Rated energy: V·Ah, Wh. */
export const ratedEnergy = (volts: number, ampereHours: number): number => volts * ampereHours;

/**
 * Share of the energy at 25 °C that a plan counts on in the cold. Our choice, rounded from the weakest cell measured at each temperature: pulsed cycles at 10 and 0 °C (doi 10.17632/wykht8y7tg.1), discharge in one hour of three cell formats below (public logs,
 * one cell each). Cells differ by a tenth at −20 °C, so a stop rule must not go by their mean.
 */
const COLD: readonly (readonly [celsius: number, share: number])[] = [
  [-20, 0.6],
  [-15, 0.7],
  [-10, 0.75],
  [0, 0.8],
  [10, 0.87],
  [25, 1],
];

/**
 * Share of the energy at 25 °C to plan with, by cell temperature: linear between the points of {@link COLD}, 1 above 25 °C.
 *
 * Valid from −20 °C, where cells stop working by their makers' limits; nothing is planned below.
 *
 * @example
 * expect(coldShare(-10)).toBeCloseTo(0.75, 6);
 */
export const coldShare = (celsius: number): number => between(COLD, celsius);

/** Usable energy of a full battery today, J. Refuses ratings, health, gauge and temperatures that no working battery has, all at once. */
export function usableEnergy(battery: Battery): Outcome<number> {
  const { serial, volts, ampereHours, health, temperature, lit } = battery;
  const faults: Notice[] = [];
  if (!(volts > 0 && volts <= 120) || !(ampereHours > 0 && ampereHours <= 60)) faults.push(notice('battery-rating', { serial }));
  if (!(health > 0 && health <= 1)) faults.push(notice('battery-health', { serial }));
  if (!isGauge(lit)) faults.push(notice('battery-gauge', { serial, lit: String(lit) }));
  faults.push(...temperatureNotices(serial, temperature, 'work'));
  if (faults.length > 0) return refused(...faults);
  return done(ratedEnergy(volts, ampereHours) * WATT_HOUR * USABLE_SHARE * health * coldShare(temperature));
}

/** Whole segments from none to four. */
export const isGauge = (lit: number): boolean => Number.isInteger(lit) && lit >= 0 && lit <= 4;

/** What a battery's temperature forbids: nothing inside the window; a stop outside it; a fault where it is no temperature of a battery. */
export function temperatureNotices(serial: string, celsius: number, use: keyof typeof TEMPERATURES): Notice[] {
  if (!(celsius >= -60 && celsius <= 100)) return [notice('battery-temperature', { serial })];
  const { low, high } = TEMPERATURES[use];
  if (celsius >= low && celsius <= high) return [];
  return [notice(use === 'charge' ? 'battery-no-charging' : 'battery-no-working', { serial, celsius, low, high })];
}

/** Charge that k lit segments of four mean: more than (k − 1)/4, at most k/4. */
export const gaugeInterval = (lit: number): { readonly low: number; readonly high: number } => ({
  low: Math.max(0, (lit - 1) / 4),
  high: lit / 4,
});
