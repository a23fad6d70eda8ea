import { nominalStressArea } from '../fasteners/thread.ts';
import { N, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { assemblyPreload } from '../torque/assembly-preload.ts';
import { equalSplit, type Friction } from '../torque/friction.ts';
import type { BoltUnderRule, Step } from './rule-set.ts';

/** A torque with a window of ± `share` about it. */
export const window = (wanted: NewtonMillimetre, share: number) => ({
  wanted,
  low: Nmm(wanted * (1 - share)),
  high: Nmm(wanted * (1 + share)),
});

/** Snug: firm contact, no figure attached to it. */
export const snug = (source: Source): Step => ({ name: 'snug', end: { kind: 'firm contact' }, order: 'sequence', source });

const YIELD_WHILE_TIGHTENING: Source = {
  standard: 'VDI 2230-1',
  edition: '2015',
  clause: 'eq. R8/1 with ν = 1: combined stress while tightening reaches R_p0.2,min',
  provenance: 'computed',
};

/** Thread friction the torsion is computed with when only a nut factor is known: its even split, never below zero. */
function threadFriction(friction: Friction | undefined, bolt: BoltUnderRule): number {
  if (friction === undefined) return 0.12;
  return friction.kind === 'coefficients' ? friction.thread : Math.max(0, equalSplit(friction.k, bolt.thread));
}

/** The preload at which the bolt starts to yield while it is turned; `null` where the grade has no yield strength. */
export function yieldCeiling(bolt: BoltUnderRule, friction = bolt.friction): Cited<Newton> | null {
  if (bolt.strength.yield === null) return null;
  const value = assemblyPreload({
    size: bolt.thread,
    yieldStrength: bolt.strength.yield,
    threadFriction: threadFriction(friction, bolt),
    utilisation: 1,
  });
  return { value, source: YIELD_WHILE_TIGHTENING };
}

/** Minimum preload of EN 1090-2 and EN 1993-1-8: F_p,C = 0.7·f_ub·A_s, f_ub nominal, A_s as the fastener standard prints it. */
export function minimumPreload(bolt: Pick<BoltUnderRule, 'grade' | 'thread'>): Newton | undefined {
  const tensile = bolt.grade.nominal?.tensile;
  return tensile === undefined ? undefined : minimumPreloadOf(tensile, nominalStressArea(bolt.thread));
}

/**
 * Nominal minimum preload.
 *
 *     F_p,C = 0.7 · f_ub · A_s
 *
 * - f_ub nominal tensile strength, 800 or 1000 MPa; A_s stress area, mm², as printed
 *
 * Source: EN 1993-1-8:2005 3.6.1 eq. (3.1); EN 1090-2:2018 8.5.1.
 *
 * @example
 * expect(inKilonewton(minimumPreloadOf(MPa(1000), mm2(353)))).toBeCloseTo(247.1, 1);
 */
export const minimumPreloadOf = (tensile: number, area: number): Newton => N(0.7 * tensile * area);

/**
 * Bolt force that a suitable preloading assembly must reach before it fails: F_bi,max ≥ 0.9·f_ub·A_s. The methods of EN 1090-2 take bolts
 * beyond first yield on purpose, so this, and not the yield strength, is what a bolt must stay below.
 *
 * Source: EN 14399-3:2015 and EN 14399-4:2015, suitability test (from memory).
 */
export function assemblyCeiling({ grade, thread }: Pick<BoltUnderRule, 'grade' | 'thread'>): Cited<Newton> | null {
  const tensile = grade.nominal?.tensile;
  if (tensile === undefined) return null;
  const source: Source = { standard: 'EN 14399-3, -4', edition: '2015', clause: 'F_bi,max ≥ 0.9 · f_ub · A_s', provenance: 'memory' };
  return { value: N(0.9 * tensile * nominalStressArea(thread)), source };
}
