import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Megapascal, type Millimetre, MPa, N, type Newton } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { nominalStressArea, type Thread } from './thread.ts';

/** Regular nuts are style 1 (height about 0.9 d), high nuts style 2. Structural nuts have stresses of their own. */
export type NutStandard = 'ISO 898-2 style 1' | 'ISO 898-2 style 2' | 'EN 14399-3';

/** Upper ends of the diameter ranges, mm. */
const UP_TO = [4, 7, 10, 16, 39] as const;

/** Stress under proof load S_p, MPa, coarse thread, by diameter range. `null`: the class is not made in that range and style. */
const STRESS: Readonly<Record<NutStandard, Readonly<Record<string, readonly (number | null)[]>>>> = {
  'ISO 898-2 style 1': {
    '4': [null, null, null, null, 510],
    '5': [520, 580, 590, 610, 630],
    '6': [600, 670, 680, 700, 720],
    '8': [800, 855, 870, 880, 920],
    '10': [1040, 1040, 1040, 1050, 1060],
    '12': [1140, 1140, 1140, 1170, null],
  },
  'ISO 898-2 style 2': {
    '8': [null, null, null, null, 890],
    '9': [900, 915, 940, 950, 920],
    '12': [1150, 1150, 1160, 1190, 1200],
  },
  'EN 14399-3': {
    '8': [null, null, null, 1000, 1000],
    '10': [null, null, null, 1160, 1160],
  },
};

const SOURCES: Readonly<Record<NutStandard, Source>> = {
  'ISO 898-2 style 1': { standard: 'ISO 898-2', edition: '1992', clause: 'coarse thread, style 1', provenance: 'published' },
  'ISO 898-2 style 2': { standard: 'ISO 898-2', edition: '1992', clause: 'coarse thread, style 2', provenance: 'published' },
  'EN 14399-3': { standard: 'EN 14399-3', edition: '2015', clause: 'proof loads of nuts', provenance: 'published' },
};

/** Stress under proof load of a nut, MPa; `undefined` where the standard lists none. */
export function nutProofStress(standard: NutStandard, nutClass: string, diameter: Millimetre): Megapascal | undefined {
  const range = UP_TO.findIndex((upTo) => diameter <= upTo);
  const stress = STRESS[standard][nutClass]?.[range];
  return stress === undefined || stress === null ? undefined : MPa(stress);
}

/**
 * Proof load of a nut: F_p = S_p·A_s, N, to the nearest 100 N as the tables print it.
 *
 * - S_p {@link nutProofStress}; A_s nominal stress area of the mandrel, mm²
 *
 * Valid for: coarse thread, M3 to M39 (EN 14399-3: M12 to M36). Source: ISO 898-2:1992 (EN 20898-2); EN 14399-3:2015.
 *
 * @example
 * expect(nutProofLoad('EN 14399-3', '10', findThread('M20').value).value.value).toBe(284200);
 */
export function nutProofLoad(standard: NutStandard, nutClass: string, thread: Thread): Outcome<Cited<Newton>> {
  const stress = thread.series === 'coarse' ? nutProofStress(standard, nutClass, thread.diameter) : undefined;
  if (stress === undefined) return refused(notice('nut-unknown', { standard, nutClass, size: thread.designation }));
  return done({ value: N(Math.round((nominalStressArea(thread) * stress) / 100) * 100), source: SOURCES[standard] });
}
