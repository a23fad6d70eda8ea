import { notice } from '../notice/index.ts';
import { torque as torqueMeasure } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, N, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import { fractionalStep } from './interpolate.ts';
import { meanExcess, meanShortfall } from './normal-loss.ts';
import { type SettingChart, settingText } from './setting-chart.ts';
import { gears } from './validate-chart.ts';

/** What a step asks of the chart. */
export interface SettingWish {
  /** torque the method names */
  readonly wanted: NewtonMillimetre;
  /** the method's window for it */
  readonly low: NewtonMillimetre;
  readonly high: NewtonMillimetre;
  /** torque per unit of preload, mm */
  readonly arm: Millimetre;
  /** preload to reach, and the one above which the bolt may be harmed */
  readonly target: Newton;
  readonly ceiling: Newton | null;
  /** is a bolt above the target as unwelcome as one below it? Not where the target is the least a bolt may have. */
  readonly aboveCounts: boolean;
  /** coefficient of variation of the friction, bolt to bolt */
  readonly frictionVariation: number;
}

export interface ChosenSetting {
  readonly labels: readonly string[];
  readonly text: string;
  readonly torque: NewtonMillimetre;
  /** mean preload, and the interval that holds 90 % of bolts */
  readonly preload: Newton;
  readonly preloadLow: Newton;
  readonly preloadHigh: Newton;
  /** expected loss, share of the target: smaller is better */
  readonly loss: number;
  /** half-way between two measured settings, allowed by the chart's owner */
  readonly interpolated: boolean;
}

export interface Choice {
  readonly best: ChosenSetting;
  /** the next best inside the window, if there is one */
  readonly next?: ChosenSetting;
}

/** A preload above the ceiling harms the bolt, one below the target only weakens the joint: own weighting, three to one. */
const EXCESS_WEIGHT = 3;
/** 5 % and 95 % points of the normal distribution. */
const Z90 = 1.6448536269514722;

/**
 * The setting with the least expected loss over preload among the calibrated ones inside the method's window.
 *
 *     F ~ N(T/arm, (T/arm)²·(V_tool² + V_k²))
 *     loss = (E[(F_target − F)⁺] + E[(F − F_target)⁺] + 3·E[(F − F_ceiling)⁺]) / F_target
 *
 * The middle term stands only where the target is an aim, not the least a bolt may have. V_tool² = (repeatability/2)² or the setting's own measured deviation², plus (U/2)²; ties go to the gear that comes first in the
 * chart, the lower one. Only measured settings are offered, unless the chart's owner allows interpolation and none measured lies
 * in the window. Refuses when nothing lies inside: says the nearest below and above.
 */
export function chooseSetting(chart: SettingChart, wish: SettingWish): Outcome<Choice> {
  let best: ChosenSetting | undefined;
  let next: ChosenSetting | undefined;
  for (const setting of chart.settings) {
    if (setting.looseningOnly || setting.torque < wish.low || setting.torque > wish.high) continue;
    const candidate = weigh(chart, wish, setting.labels, setting.torque, setting.deviation, false);
    if (best === undefined || candidate.loss < best.loss - 1e-12) {
      next = best;
      best = candidate;
    } else if (next === undefined || candidate.loss < next.loss - 1e-12) {
      next = candidate;
    }
  }
  best ??= chart.interpolation ? between(chart, wish) : undefined;
  if (best) return done(next ? { best, next } : { best });
  return refused(nothingInWindow(chart, wish));
}

function weigh(
  chart: SettingChart,
  wish: SettingWish,
  labels: readonly string[],
  torque: NewtonMillimetre,
  deviation: number | undefined,
  interpolated: boolean,
): ChosenSetting {
  const variation = preloadVariation(chart, wish.frictionVariation, deviation);
  const mean = torque / wish.arm;
  const spread = mean * variation;
  const short = meanShortfall(wish.target, mean, spread);
  const above = wish.aboveCounts ? meanExcess(wish.target, mean, spread) : 0;
  const over = wish.ceiling === null ? 0 : meanExcess(wish.ceiling, mean, spread);
  return {
    labels,
    text: settingText(chart, labels),
    torque,
    preload: N(mean),
    preloadLow: N(mean - Z90 * spread),
    preloadHigh: N(mean + Z90 * spread),
    loss: (short + above + EXCESS_WEIGHT * over) / wish.target,
    interpolated,
  };
}

/**
 * Coefficient of variation of preload from tool, certificate and friction: V² = V_tool² + (U/2)² + V_k².
 * The stated repeatability is taken as two standard deviations where the chart has no measured one.
 */
export function preloadVariation(
  chart: Pick<SettingChart, 'repeatability' | 'certificate'>,
  frictionVariation: number,
  deviation?: number,
): number {
  return Math.hypot(deviation ?? chart.repeatability / 2, chart.certificate.uncertainty / 2, frictionVariation);
}

/** A setting half-way between two measured neighbours of one gear, at the wanted torque; never outside them. */
function between(chart: SettingChart, wish: SettingWish): ChosenSetting | undefined {
  for (const gear of gears(chart)) {
    const usable = gear.filter(({ looseningOnly }) => !looseningOnly);
    const step = fractionalStep(usable, wish.wanted);
    if (step === undefined) continue;
    const labels = [...usable[0]!.labels.slice(0, -1), String(Math.round(step * 100) / 100)];
    return weigh(chart, wish, labels, wish.wanted, undefined, true);
  }
  return undefined;
}

function nothingInWindow(chart: SettingChart, wish: SettingWish) {
  const torques = chart.settings.filter(({ looseningOnly }) => !looseningOnly).map(({ torque }) => torque);
  if (torques.length === 0) return notice('chart-empty', { serial: chart.certificate.serial });
  const lowest = Nmm(Math.min(...torques));
  const highest = Nmm(Math.max(...torques));
  const window = { tool: chart.certificate.serial, low: torqueMeasure(wish.low), high: torqueMeasure(wish.high) };
  if (highest < wish.low) return notice('tool-too-small', { ...window, largest: torqueMeasure(highest) });
  if (lowest > wish.high) return notice('tool-too-large', { ...window, smallest: torqueMeasure(lowest) });
  const below = Nmm(Math.max(...torques.filter((torque) => torque < wish.low)));
  const above = Nmm(Math.min(...torques.filter((torque) => torque > wish.high)));
  return notice('chart-too-coarse', { ...window, below: torqueMeasure(below), above: torqueMeasure(above) });
}
