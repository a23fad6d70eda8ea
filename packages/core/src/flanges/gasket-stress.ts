import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Megapascal, psi } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Gasket stress at assembly and in service, on the gasket's area. */
export interface GasketStressLimits {
  readonly gasket: string;
  /** least at assembly, S_gmin-S */
  readonly seating: Megapascal;
  /** least in service, S_gmin-O, where one is given */
  readonly operating?: Megapascal;
  /** greatest at assembly, S_gmax */
  readonly greatest: Megapascal;
  readonly source: Source;
}

const api660: Source = { standard: 'API 660', clause: 'Table 3, as quoted in a public calculation sheet', provenance: 'published' };
/** Round figures from a discussion among engineers: to find a misplaced digit, never to set a target. */
const ruleOfThumb: Source = { standard: 'rule of thumb', clause: 'plausibility only', provenance: 'common-practice' };

/** Limits of gasket stress. The gasket maker's figures go before any of these. */
export const GASKET_STRESS_LIMITS: readonly GasketStressLimits[] = [
  { gasket: 'grooved metal with soft facing', seating: psi(20000), operating: psi(14000), greatest: psi(40000), source: api660 },
  { gasket: 'spiral wound, graphite filler', seating: psi(10000), greatest: psi(30000), source: ruleOfThumb },
  { gasket: 'flexible graphite sheet', seating: psi(5000), greatest: psi(15000), source: ruleOfThumb },
  { gasket: 'elastomer', seating: psi(500), greatest: psi(1500), source: ruleOfThumb },
];

/**
 * Stress limits of a gasket type.
 *
 * @example
 * expect(inPsi(gasketStressLimits('elastomer').value.greatest)).toBeCloseTo(1500, 6);
 */
export function gasketStressLimits(gasket: string): Outcome<GasketStressLimits> {
  const found = GASKET_STRESS_LIMITS.find((one) => one.gasket === gasket.trim().toLowerCase());
  return found ? done(found) : refused(notice('gasket-unknown', { gasket }));
}
