import type { Draws } from '../random/draws.ts';
import { LET_GO, type MistakeRates, SECOND_PULL } from './mistakes.ts';

/** The mistakes of one joint in one run, met as its pulls and rounds go by. */
export interface MistakesMet {
  /** begins a run; draws how far the first ones lie ahead */
  start(draws: Draws): void;
  /** share of the planned torque or angle in the next pull: 1 as a rule, 0 for a bolt passed over */
  pull(draws: Draws): number;
  /** which of the settings beside the planned one is set in the next round; −1: the planned one */
  round(draws: Draws, beside: number): number;
  /** mistakes so far in this run */
  count(): number;
}

/** Draws the distance to the next mistake instead of asking at every pull: a geometric distribution has no memory. */
export function drawMistakes(rates: MistakeRates): MistakesMet {
  const { missed } = rates;
  const early = missed + rates['stopped-early'];
  const any = early + rates['second-pull'];
  const [logPull, logRound] = [Math.log1p(-any), Math.log1p(-rates['wrong-setting'])];
  let [pulls, rounds, met] = [0, 0, 0];
  const distance = (draws: Draws, log: number) => (log === 0 ? Number.POSITIVE_INFINITY : Math.floor(Math.log(draws.uniform()) / log));
  return {
    start(draws) {
      met = 0;
      pulls = distance(draws, logPull);
      rounds = distance(draws, logRound);
    },
    pull(draws) {
      pulls -= 1;
      if (pulls >= 0) return 1;
      pulls = distance(draws, logPull);
      met += 1;
      const which = draws.uniform() * any;
      if (which < missed) return 0;
      return which < early ? LET_GO + (1 - LET_GO) * draws.uniform() : SECOND_PULL;
    },
    round(draws, beside) {
      rounds -= 1;
      if (rounds >= 0 || beside === 0) return -1;
      rounds = distance(draws, logRound);
      met += 1;
      return Math.floor(draws.uniform() * beside);
    },
    count: () => met,
  };
}
