import type { ChosenSetting } from '../chart/choose-setting.ts';
import { type SettingChart, settingText } from '../chart/setting-chart.ts';
import { type Notice, notice } from '../notice/index.ts';
import { torque } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Newton, type NewtonMillimetre, Nmm, type Radian, rad } from '../quantity.ts';
import type { TighteningList } from '../sequence/ring.ts';
import { looseningWork } from './breakaway.ts';
import { BREAKAWAY, type BreakawayRatio, type FastenerState, USABLE_TORQUE } from './conditions.ts';

/** What is loosened, and with what. */
export interface LooseningTask {
  readonly state: FastenerState;
  /** torque it was tightened with, and the preload that is still in it */
  readonly tightened: NewtonMillimetre;
  readonly preload: Newton;
  readonly chart: SettingChart;
  /** what socket and drive stand; the bolt by torsion with its preload in it */
  readonly socketRating?: NewtonMillimetre;
  readonly boltLimit?: NewtonMillimetre;
  /** order in which the joint was, or would be, tightened */
  readonly list: TighteningList;
  readonly staged: boolean;
  /** rotation from snug to the preload: half of it is a stage; what is left until the nut is free */
  readonly rotation?: Radian;
  /** turns of a free nut until it is off, against its running torque: corroded threads cost as much as breaking loose */
  readonly running?: { readonly turns: number; readonly torque: NewtonMillimetre };
  readonly pressure: boolean;
  /** isolation or line-break permit, and who gives it free */
  readonly permit?: string;
  readonly releasedBy?: string;
  /** the side bolt that is farthest from where people stand, 1-based: loosened first on a pressure joint */
  readonly firstBolt?: number;
}

/** One turn of the release. */
export interface ReleaseStage {
  readonly name: 'ease by half' | 'ease until loose' | 'free';
  readonly bolts: readonly number[];
}

export interface LooseningPlan {
  readonly state: FastenerState;
  readonly breakaway: { readonly low: NewtonMillimetre; readonly high: NewtonMillimetre; readonly ratio: BreakawayRatio };
  /** the tool's own loosening setting, or the weakest ordinary one that is enough */
  readonly setting?: Pick<ChosenSetting, 'labels' | 'torque' | 'text'> & { readonly looseningOnly: boolean };
  readonly stages: readonly ReleaseStage[];
  /** rotation from breakaway until the bolt carries nothing */
  readonly untilFree?: Radian;
  /** work to loosen one bolt at the interval’s upper end, J: what batteries are counted by; where rotation and running are known */
  readonly workEach?: number;
  readonly notices: readonly Notice[];
}

/**
 * How a joint is taken apart: breakaway torque as an interval by what one sees, whether tool, socket and bolt stand it, the loosening
 * setting, and stages in which no nut comes off while its neighbours are tight.
 *
 * The tool is planned to 85 % of its largest torque. Where breakaway may exceed what the bolt's shank stands, the method changes (penetrant,
 * heat by permit, cut, split); the torque is not raised. Refuses a torque or preload that is not above zero. A pressure joint holds before
 * its first nut until permit and name are there.
 *
 * Source: reference/practice §1 (interval, stages; marks beside each figure), ASME PCC-1:2013 section 15 for stages (from memory).
 */
export function planLoosening(task: LooseningTask): Outcome<LooseningPlan> {
  const { state, tightened, preload, list, staged, pressure, permit, releasedBy, rotation } = task;
  if (!(tightened > 0) || !(preload >= 0)) return refused(notice('loosening-torque', {}));
  const ratio = BREAKAWAY[state];
  const [low, high] = [Nmm(tightened * ratio.low), Nmm(tightened * ratio.high)];
  const setting = looseningSetting(task.chart, high);
  const notices: Notice[] = [];
  if (pressure && (!permit || !releasedBy)) notices.push(notice('loosening-release-missing', {}));
  notices.push(...capacityNotices(task, high, setting !== undefined));
  if (setting?.looseningOnly) notices.push(notice('loosening-setting-only', { setting: setting.text }));
  if (state === 'hot-aged' || state === 'sea water') notices.push(notice('loosening-penetrant', {}));
  return done({
    state,
    breakaway: { low, high, ratio },
    ...(setting ? { setting } : {}),
    stages: releaseStages(firstAway(list, task.firstBolt), staged || pressure),
    ...(rotation === undefined ? {} : { untilFree: rad(rotation) }),
    ...(rotation === undefined || task.running === undefined
      ? {}
      : { workEach: looseningWork(high, rotation, task.running.turns, task.running.torque) }),
    notices,
  });
}

/** A setting that only loosens goes first; else the weakest that overcomes the interval's upper end. */
function looseningSetting(chart: SettingChart, needed: NewtonMillimetre): LooseningPlan['setting'] {
  const enough = chart.settings.filter((one) => one.torque >= needed).sort((a, b) => a.torque - b.torque);
  const found = enough.find(({ looseningOnly }) => looseningOnly) ?? enough[0];
  if (!found) return undefined;
  const { labels, torque: value, looseningOnly = false } = found;
  return { labels, torque: value, text: settingText(chart, labels), looseningOnly };
}

function capacityNotices(task: LooseningTask, high: NewtonMillimetre, found: boolean): Notice[] {
  const notices: Notice[] = [];
  const largest = Nmm(Math.max(0, ...task.chart.settings.map((one) => one.torque)));
  if (!found) notices.push(notice('loosening-tool-small', { needed: torque(high), largest: torque(largest) }));
  else if (high > USABLE_TORQUE * largest) notices.push(notice('loosening-tool-near', { needed: torque(high), largest: torque(largest) }));
  if (task.socketRating !== undefined && high > task.socketRating) {
    notices.push(notice('loosening-socket', { needed: torque(high), rating: torque(task.socketRating) }));
  }
  if (task.boltLimit !== undefined && high > task.boltLimit) {
    notices.push(notice('loosening-bolt', { needed: torque(high), limit: torque(task.boltLimit) }));
  }
  return notices;
}

/** The list begun at another bolt, so that a first leak goes away from people. */
function firstAway(list: TighteningList, first: number | undefined): number[] {
  const order = list.flat();
  const at = first === undefined ? 0 : order.indexOf(first);
  return at <= 0 ? order : [...order.slice(at), ...order.slice(0, at)];
}

const releaseStages = (bolts: readonly number[], staged: boolean): ReleaseStage[] => [
  ...(staged ? [{ name: 'ease by half', bolts } as const] : []),
  { name: 'ease until loose', bolts },
  { name: 'free', bolts },
];
