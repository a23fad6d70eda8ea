import type { ChosenSetting } from '../chart/choose-setting.ts';
import type { SettingChart } from '../chart/setting-chart.ts';
import type { Tightening } from '../rules/rule-set.ts';
import { chanceAllInside, chanceInside, type PreloadWindow } from '../scatter/all-inside.ts';
import { type Contribution, splitScatter } from '../scatter/contributions.ts';
import type { PreloadScatter } from './plan.ts';

/** A lot's mean is known from five tests at least (EN 14399-1): a fifth of the variance of friction is then shared by all bolts. */
const TESTS = 5;
/** What is left bolt to bolt of a friction that only a table knows: the limit of V_k of a tested lot. Own split. */
const WITHIN_LOT = 0.06;

/** Where the scatter of a planned preload comes from, kept apart as shared and individual. */
export function preloadContributions(
  setting: Pick<ChosenSetting, 'torque'>,
  chart: SettingChart,
  friction: { readonly variation: number; readonly tested: boolean },
): Contribution[] {
  const measured = chart.settings.find(({ torque }) => torque === setting.torque)?.deviation;
  const within = friction.tested ? friction.variation * Math.sqrt(1 - 1 / TESTS) : Math.min(WITHIN_LOT, friction.variation);
  return [
    { source: 'certificate', variation: chart.certificate.uncertainty / 2, shared: true },
    { source: 'repeatability', variation: measured ?? chart.repeatability / 2, shared: false },
    { source: 'lot mean', variation: Math.sqrt(friction.variation ** 2 - within ** 2), shared: true },
    { source: 'bolt to bolt', variation: within, shared: false },
  ];
}

/** The chance that the bolts of a joint lie between the least they must have and harm, and what decides it. */
export function preloadScatter(
  tightening: Tightening,
  setting: Pick<ChosenSetting, 'preload'>,
  contributions: readonly Contribution[],
  bolts: number,
): PreloadScatter {
  const { shared, individual, shares } = splitScatter(contributions);
  const joint = { mean: setting.preload, shared, individual };
  const window = preloadWindow(tightening);
  return { shares, one: chanceInside(joint, window), all: chanceAllInside(joint, window, bolts), bolts };
}

type Window = Pick<Tightening, 'meaning' | 'target'> & { readonly ceiling?: Tightening['ceiling'] | undefined };
/** Where a preload has to lie: above the target where that is the least, below what harms the bolt where that is known. */
export const preloadWindow = ({ meaning, target, ceiling }: Window): PreloadWindow => ({
  low: meaning === 'at least' ? target.value : 0,
  high: ceiling?.value ?? Number.MAX_VALUE,
});
