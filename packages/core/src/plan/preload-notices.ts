import { normalCdf } from '../chart/normal-loss.ts';
import { type Notice, notice } from '../notice/index.ts';
import { percent } from '../notice/measure.ts';
import type { Tightening } from '../rules/rule-set.ts';
import type { StepPlan } from './plan.ts';

/** More yielding bolts than this stop the joint; more bolts below target than that are worth reading. Own limits. */
const YIELD_LIMIT = 0.01;
const SHORTFALL_LIMIT = 0.1;
const Z90 = 1.6448536269514722;

/** What the preload interval of the last set torque says about harm and shortfall. */
export function preloadNotices(tightening: Tightening, steps: readonly StepPlan[]): Notice[] {
  const last = steps.findLast(({ setting, name }) => setting && name !== 're-check')?.setting;
  // a step that goes on by angle leaves the preload to the angle
  const ends = tightening.steps.at(-1)?.end.kind;
  if (!last || ends === 'mark at angle') return [];
  const spread = (last.preloadHigh - last.preloadLow) / (2 * Z90);
  const notices: Notice[] = [];
  const shareAbove = tightening.ceiling ? 1 - normalCdf((tightening.ceiling.value - last.preload) / spread) : 0;
  if (shareAbove > YIELD_LIMIT) notices.push(notice('yield-likely', { share: percent(shareAbove) }));
  const shareBelow = normalCdf((tightening.target.value - last.preload) / spread);
  if (tightening.meaning === 'at least' && shareBelow > SHORTFALL_LIMIT) {
    notices.push(notice('below-target-likely', { share: percent(shareBelow) }));
  }
  return notices;
}
