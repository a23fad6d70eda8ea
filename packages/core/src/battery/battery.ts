import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';

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

/** Share of the energy at 25 °C that is left in the cold: between measured cells of three formats, a band rather than a law; their mean. */
const COLD: readonly (readonly [celsius: number, share: number])[] = [
  [-30, 0.51],
  [-20, 0.68],
  [-15, 0.74],
  [-10, 0.79],
  [0, 0.82],
  [10, 0.87],
  [25, 1],
];

/**
 * Share of the energy at 25 °C, by cell temperature: linear between measured cells, 1 above 25 °C.
 *
 * Valid from −30 °C. Source: public cold-discharge logs of consumer cells (means of three formats; band ±0.05), pulsed cycles at 10 and 0 °C.
 *
 * @example
 * expect(coldShare(-10)).toBeCloseTo(0.79, 6);
 */
export function coldShare(celsius: number): number {
  const after = COLD.findIndex(([at]) => at >= celsius);
  if (after < 0) return 1;
  if (after === 0) return COLD[0]![1];
  const [[x0, y0], [x1, y1]] = [COLD[after - 1]!, COLD[after]!];
  return y0 + ((y1 - y0) * (celsius - x0)) / (x1 - x0);
}

/** Usable energy of a full battery today, J. Refuses ratings, health and gauge that no battery has, all at once. */
export function usableEnergy(battery: Battery): Outcome<number> {
  const { serial, volts, ampereHours, health, temperature, lit } = battery;
  const faults: Notice[] = [];
  if (!(volts > 0 && volts <= 120) || !(ampereHours > 0 && ampereHours <= 60)) faults.push(notice('battery-rating', { serial }));
  if (!(health > 0 && health <= 1)) faults.push(notice('battery-health', { serial }));
  if (!Number.isInteger(lit) || lit < 0 || lit > 4) faults.push(notice('battery-gauge', { serial, lit: String(lit) }));
  if (!(temperature >= -60 && temperature <= 100)) faults.push(notice('battery-temperature', { serial }));
  if (faults.length > 0) return refused(...faults);
  return done(ratedEnergy(volts, ampereHours) * WATT_HOUR * USABLE_SHARE * health * coldShare(temperature));
}

/** Charge that k lit segments of four mean: more than (k − 1)/4, at most k/4. */
export const gaugeInterval = (lit: number): { readonly low: number; readonly high: number } => ({
  low: Math.max(0, (lit - 1) / 4),
  high: lit / 4,
});

/** Voltage a battery loses under a current: I·R·s/p, V; R of one cell, Ω; s cells in series, p in parallel. Ohm's law. */
export const voltageSag = (cell: number, series: number, parallel: number, current: number): number => (current * cell * series) / parallel;

/** A battery under its peak current: volts with nothing drawn, and at which the tool cuts off. */
export interface PeakLoad {
  readonly open: number;
  readonly cutOff: number;
  readonly sag: number;
}

/** Can it push the peak torque? Below the cut-off the tool stops with charge left: a stop before the bolt, not after. */
export const canPush = ({ open, cutOff, sag }: PeakLoad): boolean => open - sag >= cutOff;
