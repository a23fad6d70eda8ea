import { rootDiameter, shankArea } from '../fasteners/thread.ts';
import type { Megapascal, Millimetre } from '../quantity.ts';
import type { ThreadSize } from '../torque/thread-arm.ts';

/** mm/N: how much something gives per unit of force. */
export type Resilience = number;

/** A bolt from under its head to its nut or tapped hole. */
export interface BoltSegments {
  readonly size: ThreadSize;
  readonly head: 'hexagon' | 'socket';
  /** a nut takes the thread, or the lower part is tapped */
  readonly joint: 'through bolt' | 'tapped';
  readonly clampLength: Millimetre;
  /** unthreaded shank inside the clamp length */
  readonly shankLength: Millimetre;
  readonly modulus: Megapascal;
  /** modulus of the nut, or of the tapped part */
  readonly nutModulus: Megapascal;
}

export interface BoltResilience {
  readonly head: Resilience;
  readonly shank: Resilience;
  readonly freeThread: Resilience;
  /** engaged thread and nut or tapped part */
  readonly engaged: Resilience;
  readonly whole: Resilience;
}

/** Substitute lengths as multiples of d. Source: VDI 2230-1:2015 section 5.1.1. */
const HEAD = { hexagon: 0.5, socket: 0.4 } as const;
const ENGAGED = 0.5;
const NUT = { 'through bolt': 0.4, tapped: 0.33 } as const;

/**
 * Resilience of a bolt by segments.
 *
 *     δ_S = δ_SK + δ_shank + δ_free thread + δ_GM        δ = l/(E·A)
 *
 * - head 0.5·d (hexagon) or 0.4·d (socket) on A_N; shank l₁ on A_N; free thread on A_d3
 * - δ_GM: engaged thread 0.5·d on A_d3, nut 0.4·d or tapped part 0.33·d on A_N with its own modulus
 *
 * Valid for: shank bolts, cylindrical segments. Source: VDI 2230-1:2015 section 5.1.1.
 *
 * @example
 * const m10 = { diameter: mm(10), pitch: mm(1.5) };
 * const bolt = { size: m10, head: 'hexagon', joint: 'through bolt', clampLength: mm(40), shankLength: mm(22), modulus: MPa(205000), nutModulus: MPa(205000) };
 * expect(1e6 * boltResilience(bolt).whole).toBeCloseTo(4.071, 3);
 */
export function boltResilience(bolt: BoltSegments): BoltResilience {
  const { size, modulus, nutModulus, clampLength } = bolt;
  const nominal = shankArea(size.diameter);
  const root = shankArea(rootDiameter(size.diameter, size.pitch));
  const head = (HEAD[bolt.head] * size.diameter) / (modulus * nominal);
  const shank = bolt.shankLength / (modulus * nominal);
  const freeThread = (clampLength - bolt.shankLength) / (modulus * root);
  const engaged = (ENGAGED * size.diameter) / (modulus * root) + (NUT[bolt.joint] * size.diameter) / (nutModulus * nominal);
  return { head, shank, freeThread, engaged, whole: head + shank + freeThread + engaged };
}
