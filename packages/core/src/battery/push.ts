import { notice } from '../notice/index.ts';
import { torque as torqueMeasure } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type NewtonMillimetre, Nmm } from '../quantity.ts';
import { type Cells, temperatureNotices } from './battery.ts';
import { between } from './between.ts';

/** What a tool asks of its battery, from the bench. */
export interface PeakDraw {
  /** battery current at the stall for each N·mm of torque, A; in this gear */
  readonly amperesPerTorque: number;
  /** voltage under load at which the tool cuts off */
  readonly cutOff: number;
}

/** Resistance over that at 25 °C of one cell at half charge, 10 s pulse: doi 10.17632/wykht8y7tg.1. Other cells have other ohms, much the same ratio. */
const COLD_RESISTANCE: readonly (readonly [celsius: number, ratio: number])[] = [
  [-20, 217 / 37.3],
  [-10, 129.9 / 37.3],
  [0, 79.7 / 37.3],
  [10, 52 / 37.3],
  [25, 1],
];

/**
 * Inner resistance against 25 °C: linear between measured temperatures, not below 1; −20 °C stands for all that is colder.
 *
 * @example
 * expect(resistanceRatio(0)).toBeCloseTo(2.137, 3);
 */
export const resistanceRatio = (celsius: number): number => between(COLD_RESISTANCE, celsius);

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

/**
 * Greatest power a battery can give, W: P = V·(V₀ − V)/R at V = V₀/2, or at the cut-off where that lies higher, as it does in every tool.
 *
 * - V₀ volts with nothing drawn; R inner resistance of the whole battery, Ω: cell·s/p
 *
 * Source: maximum power transfer, circuit theory.
 *
 * @example
 * expect(transferablePower(18, (0.015 * 5) / 2, 0)).toBeCloseTo(2160, 6);
 * expect(transferablePower(18, (0.015 * 5) / 2, 13)).toBeCloseTo(1733.3, 1);
 * expect(transferablePower(12, 0.1, 13)).toBe(0);
 */
export function transferablePower(open: number, resistance: number, cutOff: number): number {
  const volts = Math.max(cutOff, open / 2);
  return (volts * Math.max(0, open - volts)) / resistance;
}

/** Voltage of one cell with nothing drawn, empty and full; straight between. Lithium-ion, from memory. */
const OPEN_VOLTS = { empty: 3.3, full: 4.1 } as const;

function peakLoad(cells: Cells, { amperesPerTorque, cutOff }: PeakDraw, charge: number, celsius: number, torque: number): PeakLoad {
  return {
    open: cells.series * (OPEN_VOLTS.empty + charge * (OPEN_VOLTS.full - OPEN_VOLTS.empty)),
    cutOff,
    sag: voltageSag(cells.resistance * resistanceRatio(celsius), cells.series, cells.parallel, amperesPerTorque * torque),
  };
}

/**
 * Greatest torque a battery can push before the tool cuts off for want of voltage: T = (V_open − V_cut)/ΔV₁, ΔV₁ the sag at unit torque.
 *
 * `charge`: the least it may have, 0 to 1. Why it matters: half full at −20 °C it may trip at peak torque with charge left. Ohm's law.
 *
 * @example
 * const cells = { series: 5, parallel: 2, resistance: 0.015 };
 * const tool = { amperesPerTorque: 60 / Nm(1000), cutOff: 13 };
 * expect(inNewtonMetre(greatestPush(cells, tool, 0.5, 25))).toBeCloseTo(2444, 0);
 * expect(inNewtonMetre(greatestPush(cells, tool, 0.5, -20))).toBeCloseTo(420, 0);
 */
export function greatestPush(cells: Cells, tool: PeakDraw, charge: number, celsius: number): NewtonMillimetre {
  const { open, cutOff, sag } = peakLoad(cells, tool, charge, celsius, 1);
  return Nmm(Math.max(0, open - cutOff) / sag);
}

/** Refuses, before the bolt and not after it, a torque that the battery cannot push at its temperature and charge. */
export function pushes(
  battery: { readonly serial: string; readonly cells: Cells; readonly charge: number; readonly temperature: number },
  tool: PeakDraw,
  torque: NewtonMillimetre,
): Outcome<NewtonMillimetre> {
  const { serial, cells, charge, temperature } = battery;
  const faults = [
    ...(charge >= 0 && charge <= 1 ? [] : [notice('battery-charge', { serial })]),
    ...([cells.series, cells.parallel, cells.resistance, tool.amperesPerTorque, tool.cutOff, torque].every((one) => one > 0)
      ? []
      : [notice('battery-cells', { serial })]),
    ...temperatureNotices(serial, temperature, 'work'),
  ];
  if (faults.length > 0) return refused(...faults);
  const greatest = greatestPush(cells, tool, charge, temperature);
  if (canPush(peakLoad(cells, tool, charge, temperature, torque))) return done(greatest);
  const measures = { torque: torqueMeasure(torque), greatest: torqueMeasure(greatest) };
  return refused(notice('battery-cannot-push', { serial, celsius: temperature, ...measures }));
}
