import { isoThreadLength } from '../fasteners/iso-hexagon.ts';
import { isMetric, type Thread } from '../fasteners/thread.ts';
import { type Millimetre, MPa, mm, N, type Newton, type Radian, rad } from '../quantity.ts';
import type { Source } from '../source.ts';
import { boltResilience, type Resilience } from './bolt-resilience.ts';
import { rotationToPreload } from './joint-angle.ts';
import { coneDiameter, partResilience } from './part-resilience.ts';

/** A bolt with nut through solid steel. */
export interface SolidJoint {
  readonly thread: Thread;
  readonly clampThickness: Millimetre;
  /** nominal length, where known: then the shank is, too */
  readonly length?: Millimetre;
  readonly bearingFace: Millimetre;
  readonly hole: Millimetre;
}

/** How far the turned part rotates, and the band outside which a reading is asked about. */
export interface ExpectedRotation {
  readonly expected: Radian;
  readonly low: Radian;
  readonly high: Radian;
}

/**
 * Plies still closing and threads still seating turn further than the elastic joint; a stiffer joint than assumed turns less. Common
 * practice, no source: outside the band one looks again, nothing is rejected.
 */
const BAND = { low: 0.6, high: 1.8 } as const;
const STEEL = MPa(205_000);
export const ROTATION_SOURCE: Source = {
  standard: 'VDI 2230-1',
  edition: '2015',
  clause: '5.1, ϑ = 360°/P·F·(δ_S + δ_P)',
  provenance: 'computed',
};

/**
 * Resilience of bolt and parts together, δ_S + δ_P, mm/N: steel through and through, plates wide enough for the whole deformation cone.
 *
 * Valid for: closed joint, elastic, bolt with nut; no gasket. Source: VDI 2230-1:2015.
 */
export function solidResilience({ thread, clampThickness, length, bearingFace, hole }: SolidJoint): Resilience {
  const shank = length === undefined || !isMetric(thread) ? 0 : length - isoThreadLength(thread.diameter, length);
  const bolt = boltResilience({
    size: thread,
    head: 'hexagon',
    joint: 'through bolt',
    clampLength: clampThickness,
    shankLength: mm(Math.max(0, Math.min(shank, clampThickness))),
    modulus: STEEL,
    nutModulus: STEEL,
  });
  const part = { clampLength: clampThickness, bearingFace, hole, modulus: STEEL, joint: 'through bolt' as const };
  const wide = coneDiameter({ ...part, outside: mm(WIDE * bearingFace) });
  return bolt.whole + partResilience({ ...part, outside: wide });
}
/** Outside diameter over bearing face at which the cone's slope is taken. */
const WIDE = 3;

/**
 * Rotation from one preload to a higher one.
 *
 *     ϑ = 2π/P·(F₂ − F₁)·(δ_S + δ_P)
 *
 * Valid as {@link solidResilience}. Source: VDI 2230-1:2015.
 *
 * @example
 * const joint = { thread: findThread('M24').value, clampThickness: mm(56), length: mm(95), bearingFace: mm(38), hole: mm(26) };
 * expect(inDegrees(expectedRotation(joint, N(0), kN(247)).expected)).toBeCloseTo(38.4, 1);
 */
export function expectedRotation(joint: SolidJoint, from: Newton, to: Newton): ExpectedRotation {
  const expected = rotationToPreload(to, joint.thread.pitch, solidResilience(joint), 0, from);
  return { expected, low: rad(BAND.low * expected), high: rad(BAND.high * expected) };
}

/** Does a recorded rotation fit? It flags, and never rejects. */
export const judgeRotation = (recorded: Radian, { low, high }: ExpectedRotation): 'fits' | 'less than expected' | 'more than expected' =>
  recorded < low ? 'less than expected' : recorded > high ? 'more than expected' : 'fits';

/** No preload at all, where a snug joint's own is not known. */
export const NO_PRELOAD = N(0);
