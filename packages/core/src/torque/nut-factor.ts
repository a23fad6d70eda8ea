import type { Source } from '../source.ts';

/** A nut factor somebody printed for a condition. Sources differ by half for the same words: it is data with an origin, never a default. */
export interface NutFactorEntry {
  readonly condition: string;
  readonly k: number;
  readonly source: Source;
}

const shigley: Source = {
  standard: 'Shigley’s Mechanical Engineering Design',
  edition: '9th',
  clause: 'Table 8-15',
  provenance: 'published',
};
const shigleyText: Source = { standard: 'Shigley’s Mechanical Engineering Design', clause: 'condition not stated', provenance: 'memory' };
const mott: Source = { standard: 'Mott, Machine Elements in Mechanical Design', provenance: 'published' };
const speck: Source = { standard: 'Speck, Mechanical Fastening, Joining and Assembly', clause: 'p. 85', provenance: 'published' };
const handbook: Source = {
  standard: 'Bickford & Nassar, Handbook of Bolts and Bolted Joints',
  clause: 'lubricants',
  provenance: 'published',
};
const bickford: Source = { standard: 'Bickford, Introduction to the Design and Behavior of Bolted Joints', provenance: 'memory' };

/**
 * Printed nut factors k of T = k·F·d, each with its source. They contradict each other: lubricated 0.15 or 0.18, dry 0.20 or 0.30.
 *
 * @example
 * expect(NUT_FACTORS.filter(({ condition }) => condition === 'lubricated').map(({ k }) => k)).toEqual([0.18]);
 */
export const NUT_FACTORS: readonly NutFactorEntry[] = [
  { condition: 'non-plated, black finish', k: 0.3, source: shigley },
  { condition: 'zinc-plated', k: 0.2, source: shigley },
  { condition: 'lubricated', k: 0.18, source: shigley },
  { condition: 'cadmium-plated', k: 0.16, source: shigley },
  { condition: 'anti-seize compound', k: 0.12, source: shigley },
  { condition: 'anti-seize compound with special nuts', k: 0.09, source: { ...shigley, provenance: 'memory' } },
  { condition: 'unknown', k: 0.2, source: shigleyText },
  { condition: 'any lubrication present, residual cutting fluid included', k: 0.15, source: mott },
  { condition: 'threads cleaned and dried', k: 0.2, source: mott },
  { condition: 'extreme-pressure lubricant, low end', k: 0.1, source: speck },
  { condition: 'lowest tabulated mean, many lubricants', k: 0.086, source: handbook },
  { condition: 'highest tabulated mean, many lubricants', k: 0.52, source: handbook },
  { condition: 'as-received steel, minimum', k: 0.158, source: bickford },
  { condition: 'as-received steel, mean', k: 0.2, source: bickford },
  { condition: 'as-received steel, maximum', k: 0.267, source: bickford },
];

/** Nut factors met on low-alloy flange studs with the usual anti-seize at ambient temperature. Source: ASME PCC-1 appendix K, from memory. */
export const FLANGE_STUD_NUT_FACTORS = {
  lower: 0.16,
  upper: 0.23,
  source: { standard: 'ASME PCC-1', edition: '2013', clause: 'appendix K', provenance: 'memory' } satisfies Source,
} as const;

/** Largest nut factor a lot may show in the rotational-capacity test: T ≤ 0.25·P·D. Source: FHWA rotational-capacity test. */
export const ROTATIONAL_CAPACITY_NUT_FACTOR = 0.25;

/**
 * Nut factor of a flange stud from one coefficient of friction: k ≈ μ + 0.04. An estimate.
 * Source: ASME PCC-1:2013 appendix K, from memory.
 *
 * @example
 * expect(flangeNutFactor(0.14)).toBeCloseTo(0.18, 10);
 */
export const flangeNutFactor = (friction: number): number => friction + 0.04;

/**
 * Nut factor from one coefficient of friction for thread and face: k ≈ 0.556·μ + 0.65·μ + 0.019.
 *
 * - 0.556 thread part, 0.65 bearing part (D_b = 1.3 d), 0.019 lead
 *
 * Error: within 3 % of printed pairs (k to two digits). Source: short form of Japanese practice, as printed with test results.
 *
 * @example
 * expect(shortNutFactor(0.143)).toBeCloseTo(0.19, 2);
 */
export const shortNutFactor = (friction: number): number => 0.556 * friction + 0.65 * friction + 0.019;
