import { type NewtonMillimetre, Nmm } from '../quantity.ts';
import type { Setting } from './setting-chart.ts';

type Measured = Pick<Setting, 'labels' | 'torque'>;

/** The settings of one gear in rising order. */
export type Gear = readonly Measured[];

const stepOf = ({ labels }: Measured): number => Number(labels.at(-1)?.replace(',', '.'));

/**
 * Where a torque lies on the scale of one gear, between two measured neighbours; `undefined` outside them.
 *
 *     s = s₁ + (s₂ − s₁)·(T − T₁)/(T₂ − T₁)
 *
 * Source: linear interpolation between neighbouring calibrated steps, never beyond: common practice, no source.
 *
 * @example
 * const gear = [{ labels: ['4'], torque: Nm(415) }, { labels: ['5'], torque: Nm(500) }];
 * expect(fractionalStep(gear, Nm(450))).toBeCloseTo(4.412, 3);
 * expect(fractionalStep(gear, Nm(510))).toBe(undefined);
 */
export function fractionalStep(gear: Gear, torque: NewtonMillimetre): number | undefined {
  const at = gear.findIndex((upper, i) => i > 0 && torque >= gear[i - 1]!.torque && torque <= upper.torque);
  if (at < 1) return undefined;
  const [lower, upper] = [gear[at - 1]!, gear[at]!];
  const step = stepOf(lower) + ((stepOf(upper) - stepOf(lower)) * (torque - lower.torque)) / (upper.torque - lower.torque);
  return Number.isFinite(step) ? step : undefined;
}

/** The torque at a place between two measured steps of one gear: the inverse of {@link fractionalStep}. */
export function torqueAtStep(gear: Gear, step: number): NewtonMillimetre | undefined {
  const at = gear.findIndex((upper, i) => i > 0 && step >= stepOf(gear[i - 1]!) && step <= stepOf(upper));
  if (at < 1) return undefined;
  const [lower, upper] = [gear[at - 1]!, gear[at]!];
  return Nmm(lower.torque + ((upper.torque - lower.torque) * (step - stepOf(lower))) / (stepOf(upper) - stepOf(lower)));
}

/** The measured setting whose torque is nearest. */
export const nearestSetting = <S extends Measured>(gear: readonly S[], torque: NewtonMillimetre): S =>
  gear.reduce((best, one) => (Math.abs(one.torque - torque) < Math.abs(best.torque - torque) ? one : best));
