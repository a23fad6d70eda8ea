import { ALIGNMENT_LIMITS } from '../flanges/alignment.ts';
import { type Notice, notice } from '../notice/index.ts';
import { length } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';

/** Gap between flange faces at points round the joint, in one pass. */
export interface GapReading {
  readonly pass: number;
  /** at 4 or 8 points, evenly spaced from bolt 1 on */
  readonly gaps: readonly Millimetre[];
}

export interface GapVerdict {
  readonly spread: Millimetre;
  readonly inside: boolean;
  /** where the gap is largest, 0-based point: loose there, or tighten there first */
  readonly widest: number;
  /** largest closing since the pass before */
  readonly closed?: Millimetre;
  readonly notices: readonly Notice[];
}

/**
 * Whether a flange closes evenly: gaps at 4 or 8 points after each pass. Refuses another number of points and gaps below zero.
 *
 * @example
 * const verdict = judgeGaps([{ pass: 1, gaps: [mm(2.1), mm(2.4), mm(2.2), mm(2)] }]);
 * expect(verdict.value.inside).toBe(true);
 */
export function judgeGaps(readings: readonly GapReading[], allowed: Millimetre = ALIGNMENT_LIMITS.parallelism): Outcome<GapVerdict> {
  const last = readings.at(-1);
  if (!last) return refused(notice('gap-none', {}));
  const faults: Notice[] = readings.flatMap(({ pass, gaps }) => [
    ...(gaps.length === 4 || gaps.length === 8 ? [] : [notice('gap-points', { pass, points: gaps.length })]),
    ...gaps.flatMap((gap, at) => (gap >= 0 ? [] : [notice('gap-negative', { pass, point: at + 1 })])),
  ]);
  if (faults.length > 0) return refused(...faults);
  const spread = mm(Math.max(...last.gaps) - Math.min(...last.gaps));
  const before = readings.at(-2);
  const inside = spread <= allowed + 1e-9;
  return done({
    spread,
    inside,
    widest: last.gaps.indexOf(mm(Math.max(...last.gaps))),
    ...(before?.gaps.length === last.gaps.length ? { closed: mm(Math.max(...before.gaps.map((gap, at) => gap - last.gaps[at]!))) } : {}),
    notices: inside ? [] : [notice('gap-uneven', { spread: length(spread), allowed: length(allowed) })],
  });
}
