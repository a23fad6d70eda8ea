import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';

/** What crews do at times. Rates a pull, except of a wrong setting: a round. */
export interface MistakeRates {
  /** a bolt is passed over */
  readonly missed: number;
  /** the trigger is let go before the tool stalls: 40 to 100 % of the torque or angle */
  readonly 'stopped-early': number;
  /** a stalled tool is pulled again: {@link SECOND_PULL} more */
  readonly 'second-pull': number;
  /** the setting beside the planned one is set for a whole round */
  readonly 'wrong-setting': number;
}

/** Own estimates; whoever knows the crew's own figures gives them instead. */
export const USUAL_MISTAKES: MistakeRates = { missed: 0.0005, 'stopped-early': 0.001, 'second-pull': 0.003, 'wrong-setting': 0.002 };
export const NO_MISTAKES: MistakeRates = { missed: 0, 'stopped-early': 0, 'second-pull': 0, 'wrong-setting': 0 };

/** A second impulse of a stalled tool adds about so much. Common practice, no source. */
export const SECOND_PULL = 1.04;
/** Least share of the torque when the trigger is let go early. Own estimate. */
export const LET_GO = 0.4;

/** Rates with some of them replaced; refuses names that are no mistake and rates that are none, all at once. */
export function mistakeRates(given: Readonly<Record<string, number>>): Outcome<MistakeRates> {
  const notices = Object.entries(given).flatMap(([name, rate]): Notice[] => {
    if (!Object.hasOwn(USUAL_MISTAKES, name)) {
      return [notice('mistake-unknown', { name, known: Object.keys(USUAL_MISTAKES).join(', ') })];
    }
    return rate >= 0 && rate <= MOST_RATE ? [] : [notice('mistake-rate', { name, rate: String(rate), most: String(MOST_RATE) })];
  });
  return notices.length > 0 ? refused(...notices) : done({ ...USUAL_MISTAKES, ...given });
}
/** All three at once stay below one. */
const MOST_RATE = 0.3;
