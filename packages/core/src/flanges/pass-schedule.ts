import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type NewtonMillimetre, Nm, Nmm } from '../quantity.ts';
import type { Source } from '../source.ts';

export const passScheduleSource: Source = {
  standard: 'ASME PCC-1',
  edition: '2013',
  clause: 'Table 2 and section 11, legacy pattern',
  provenance: 'memory',
};

/** One round: share of the target torque, and how the bolts are taken. */
export interface FlangeRound {
  readonly round: 1 | 2 | 3 | 4 | 5;
  readonly low: number;
  readonly high: number;
  readonly order: 'sequence' | 'circular';
}

/** The rounds after snugging. The gap is checked after each; round 4 goes on until no nut moves, round 5 repeats it after the wait. */
export const FLANGE_ROUNDS: readonly FlangeRound[] = [
  { round: 1, low: 0.2, high: 0.3, order: 'sequence' },
  { round: 2, low: 0.5, high: 0.7, order: 'sequence' },
  { round: 3, low: 1, high: 1, order: 'sequence' },
  { round: 4, low: 1, high: 1, order: 'circular' },
  { round: 5, low: 1, high: 1, order: 'circular' },
];

/** Places around the flange at which the gap is measured, at least, evenly spaced. */
export const GAP_CHECK_POINTS = 8;
/** Least wait before round 5, hours: short-term relaxation of the gasket. */
export const RELAXATION_WAIT_HOURS = 4;
/** Flange and bolt temperature for a retorque at start-up. Not for PTFE or compressed sheet: there the gasket's guidance decides. */
export const START_UP_RETORQUE = {
  fahrenheit: [250, 450],
  celsius: [120, 230],
  source: { ...passScheduleSource, clause: '10.4' },
} as const;

/**
 * Torque window of a round: 20–30 %, 50–70 %, then 100 % of the target torque.
 *
 * @example
 * const window = roundTorque(1, lbfFt(600));
 * expect([inLbfFt(window.low), inLbfFt(window.high)].map(Math.round)).toEqual([120, 180]);
 */
export function roundTorque(
  round: FlangeRound['round'],
  target: NewtonMillimetre,
): { readonly low: NewtonMillimetre; readonly high: NewtonMillimetre } {
  const { low, high } = FLANGE_ROUNDS[round - 1]!;
  return { low: Nmm(low * target), high: Nmm(high * target) };
}

/** Snugging: 15 to 30 N·m (10 to 20 lbf·ft), and by edition not above this share of the target torque (2013) or target bolt load (2022). */
export const SNUG_TORQUE = { low: Nm(15), high: Nm(30) } as const;
const SNUG_SHARE: Readonly<Record<string, number>> = { '2013': 0.2, '2022': 0.1 };

/**
 * Greatest share of the target that snugging may reach. The editions contradict each other: 20 % of torque (2013), 10 % of bolt load (2022).
 *
 * @example
 * expect(snugShare('2013').value).toBe(0.2);
 * expect(snugShare('1999').notices[0].code).toBe('edition-unknown');
 */
export function snugShare(edition: string): Outcome<number> {
  const share = Object.hasOwn(SNUG_SHARE, edition) ? SNUG_SHARE[edition] : undefined;
  return share === undefined ? refused(notice('edition-unknown', { edition, known: Object.keys(SNUG_SHARE).join(', ') })) : done(share);
}
