import { type Notice, notice } from '../notice/index.ts';
import { length } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { degrees, type Millimetre, mm, N, type Newton, type Radian } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { byNutFactor, type Friction } from '../torque/friction.ts';
import type { BoltUnderRule, KClass } from './rule-set.ts';
import { minimumPreload } from './shared.ts';

/** What the four methods of EN 1090-2 have in common. */
export const EN_1090: Source = { standard: 'EN 1090-2', edition: '2018', provenance: 'memory' };

/** A clause of the edition that was asked for; both editions number the clauses of 8.5 alike. */
export const en1090Source = ({ edition }: Pick<BoltUnderRule, 'edition'>, clause: string): Source => ({ ...EN_1090, edition, clause });

export type En1090Method = 'torque' | 'combined' | 'HRC' | 'DTI';

/** k-classes that each method accepts. EN 1090-2:2018 Table 20; EN 14399-1 (from memory). HRC with K0 needs HRD nuts. */
const ACCEPTED: Readonly<Record<En1090Method, readonly KClass[]>> = {
  torque: ['K2'],
  combined: ['K1', 'K2'],
  HRC: ['K0', 'K2'],
  DTI: ['K0', 'K1', 'K2'],
};

/**
 * May a method be used with assemblies of this k-class?
 *
 * Source: EN 1090-2:2018 8.5.2 and Table 20 (from memory).
 *
 * @example
 * expect(kClassAllowed('torque', 'K1')).toBe(false);
 * expect(kClassAllowed('combined', 'K1')).toBe(true);
 */
export const kClassAllowed = (method: En1090Method, kClass: KClass): boolean => ACCEPTED[method].includes(kClass);

/** k of M_r,1 where only class K1 is known: 0.13 (EN 1090-2:2018 8.5.2, from memory); K1 holds every k between 0.10 and 0.16. */
export const K1_REFERENCE = 0.13;
const K1_FRICTION: Friction = byNutFactor(K1_REFERENCE, { ...EN_1090, clause: '8.5.2, M_r,1' }, 0.06);

/** Systems of EN 14399 made for each method; an indicator (EN 14399-9) goes with either of the two. EN 1090-2:2018 5.6.4 (from memory). */
const SYSTEMS: Readonly<Record<En1090Method, string>> = { torque: 'HV / HR', combined: 'HV / HR', HRC: 'HRC', DTI: 'HR / HV' };

const METHOD_NAME: Readonly<Record<En1090Method, string>> = {
  torque: 'torque method',
  combined: 'combined method',
  HRC: 'tension-controlled-bolt method',
  DTI: 'direct-tension-indicator method',
};

/** Target and reference friction, or all that keeps the method from being used. */
export function en1090Preconditions(
  bolt: BoltUnderRule,
  method: En1090Method,
): Outcome<{ readonly target: Cited<Newton>; readonly friction: Friction | undefined }> {
  const notices: Notice[] = [];
  if (bolt.thread.diameter < 12) notices.push(notice('structural-size-too-small', { size: bolt.thread.designation }));
  const target = preloadable(bolt) ? (bolt.given.preload ?? minimumPreload(bolt)) : undefined;
  if (target === undefined) notices.push(notice('grade-not-preloadable', { grade: bolt.grade.id, rule: 'EN 1090-2' }));
  const name = METHOD_NAME[method];
  if (bolt.system === 'plain') notices.push(notice('assembly-needed', { method: name, needed: SYSTEMS[method] }));
  if (bolt.kClass === undefined) notices.push(notice('k-class-needed', { method: name, needed: ACCEPTED[method].join(' / ') }));
  else if (!kClassAllowed(method, bolt.kClass)) {
    notices.push(notice('k-class-insufficient', { method: name, kClass: bolt.kClass, needed: ACCEPTED[method].join(' / ') }));
  }
  if (bolt.kClass === 'K2' && !(bolt.tested && bolt.friction) && method !== 'DTI' && method !== 'HRC') {
    notices.push(notice('lot-untested', { method: name }));
  }
  if (notices.length > 0 || target === undefined) return refused(...notices);
  const source: Source =
    bolt.given.preload === undefined
      ? { standard: 'EN 1993-1-8', edition: '2005', clause: '3.6.1', provenance: 'published' }
      : { standard: 'engineer', provenance: 'engineer' };
  return done({ target: { value: target, source }, friction: bolt.kClass === 'K1' ? K1_FRICTION : bolt.friction });
}

/** Only classes 8.8 and 10.9 are made for preloading (EN 14399-1). */
const preloadable = ({ grade }: BoltUnderRule) => grade.id === '8.8' || grade.id === '10.9';

/**
 * Rotation of the second step of the combined method, by the clamped thickness.
 *
 * - `clampThickness` Σt: nominal thickness of all parts with packs and washers, mm
 * - Σt < 2d: 60°; 2d ≤ Σt < 6d: 90°; 6d ≤ Σt ≤ 10d: 120°; above: none tabulated, a procedure test decides
 *
 * Source: EN 1090-2:2018 Table 21.
 *
 * @example
 * expect(inDegrees(combinedRotation(mm(24), mm(48)))).toBeCloseTo(90, 9);
 * expect(combinedRotation(mm(24), mm(241))).toBe(undefined);
 */
export function combinedRotation(diameter: Millimetre, clampThickness: Millimetre): Radian | undefined {
  return rotationByThickness(diameter, clampThickness, [60, 90, 120]);
}

/** The three bands of Σt/d share their limits between the two German and European tables; only the angles differ. */
export function rotationByThickness(
  diameter: Millimetre,
  clampThickness: Millimetre,
  [thin, middle, thick]: readonly [number, number, number],
): Radian | undefined {
  const ratio = clampThickness / diameter;
  if (!(ratio > 0) || ratio > 10) return undefined;
  return degrees(ratio < 2 ? thin : ratio < 6 ? middle : thick);
}

/** The angle for a bolt, or why there is none. */
export function rotationFor(
  bolt: BoltUnderRule,
  table: (diameter: Millimetre, clampThickness: Millimetre) => Radian | undefined,
): Outcome<Radian> {
  if (bolt.clampThickness === undefined) return refused(notice('clamp-thickness-needed', {}));
  const angle = table(bolt.thread.diameter, bolt.clampThickness);
  if (angle !== undefined) return done(angle);
  return refused(notice('angle-not-tabulated', { thickness: length(bolt.clampThickness), limit: length(mm(10 * bolt.thread.diameter)) }));
}

/**
 * Slip resistance at serviceability: F_s,Rd,ser = k_s·n·μ·F_p,C/γ_M3,ser, N.
 *
 * - k_s hole shape (1.0 normal), n friction faces, μ slip factor of the surface class, γ_M3,ser = 1.1
 *
 * Source: EN 1993-1-8:2005 eq. (3.8a).
 *
 * @example
 * expect(inKilonewton(slipResistance(kN(47.21), 0.2))).toBeCloseTo(8.58, 2);
 */
export const slipResistance = (preload: Newton, slipFactor: number, faces = 1, holeFactor = 1, partialFactor = 1.1): Newton =>
  N((holeFactor * faces * slipFactor * preload) / partialFactor);
