import { inchSize } from '../fasteners/inch-size.ts';
import { inchThread } from '../fasteners/inch-threads.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inch, inKip, kip, kN, type Megapascal, type Millimetre, mm, N, type Newton, type SquareMillimetre } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { type RcscEdition, rcscSource } from './editions.ts';
import { structuralGrade } from './structural-grade.ts';

/** Size, group 120 to 2014 (A325: 105 ksi above 1 in), group 120 since 2020 (F3125: 120 ksi throughout), group 150; kip. */
// biome-ignore format: a table is read by its columns
const INCH: readonly (readonly [size: string, older120: number, newer120: number, group150: number])[] = [
  ['1/2',   12,  12,  15],
  ['5/8',   19,  19,  24],
  ['3/4',   28,  28,  35],
  ['7/8',   39,  39,  49],
  ['1',     51,  51,  64],
  ['1 1/8', 56,  64,  80],
  ['1 1/4', 71,  81,  102],
  ['1 3/8', 85,  97,  121],
  ['1 1/2', 103, 118, 148],
];

/** Size, A325M and A490M; kN. The same in every edition. */
const METRIC: readonly (readonly [d: number, group120: number, group150: number])[] = [
  [16, 91, 114],
  [20, 142, 179],
  [22, 176, 221],
  [24, 205, 257],
  [27, 267, 334],
  [30, 326, 408],
  [36, 475, 595],
];

/** Minimum pretension by edition: the older column, and the newer one of the 120 ksi editions. */
export const MINIMUM_PRETENSION = {
  inch: INCH.map(([size, older120, newer120, group150]) => ({
    diameter: inch(inchSize(size)!),
    older120: kip(older120),
    newer120: kip(newer120),
    group150: kip(group150),
  })),
  metric: METRIC.map(([d, group120, group150]) => ({ diameter: mm(d), group120: kN(group120), group150: kN(group150) })),
};

const source = (edition: RcscEdition): Source =>
  edition === '2020'
    ? rcscSource('2020', 'Table 5.2; AISC 360-16 Table J3.1')
    : rcscSource(edition, 'Table 8.1; AISC 360-05 Table J3.1', 'published');

/**
 * Minimum bolt pretension T_m of a structural bolt, as tabulated.
 *
 * - `gradeId` of the grade: `F3125 A325`, `F3125 A490`, `F3125 F1852`, `F3125 F2280`, `A325-14`, `A490`, `F3125 A325M`, `F3125 A490M`
 * - edition: up to 2014 group 120 drops above 1 in, since 2020 it does not. A bolt made to A325-14 keeps the older value.
 *
 * Valid for: 1/2 to 1 1/2 in; M16 to M36. Source: RCSC Table 8.1 (2014), Table 5.2 (2020, from memory); AISC 360 Table J3.1, J3.1M.
 *
 * @example
 * expect(inKip(minimumPretension('F3125 A325', inch(1.125), '2014').value.value)).toBeCloseTo(56, 6);
 * expect(inKip(minimumPretension('F3125 A325', inch(1.125), '2020').value.value)).toBeCloseTo(64, 6);
 */
export function minimumPretension(gradeId: string, diameter: Millimetre, edition: RcscEdition): Outcome<Cited<Newton>> {
  const grade = structuralGrade(gradeId);
  if (!grade.ok) return grade;
  const { group, beforeF3125 } = grade.value;
  const value = tabulated(group, diameter, edition === '2020' && !beforeF3125);
  if (value === undefined) return refused(notice('size-not-in-table', { size: sizeName(group, diameter), table: source(edition).clause! }));
  return done({ value, source: source(beforeF3125 && edition === '2020' ? '2014' : edition) });
}

function tabulated(group: string, diameter: Millimetre, newer: boolean): Newton | undefined {
  const same = (one: { readonly diameter: Millimetre }) => Math.abs(one.diameter - diameter) < 1e-6;
  const metric = group.endsWith('M') ? MINIMUM_PRETENSION.metric.find(same) : undefined;
  const inches = group.endsWith('M') ? undefined : MINIMUM_PRETENSION.inch.find(same);
  switch (group) {
    case '120':
      return newer ? inches?.newer120 : inches?.older120;
    case '150':
      return inches?.group150;
    case '120M':
      return metric?.group120;
    default:
      return metric?.group150;
  }
}

const sizeName = (group: string, diameter: Millimetre): string =>
  group.endsWith('M') ? `M${diameter}` : (inchThread(diameter, 'UNC')?.designation ?? `${diameter} mm`);

/**
 * The law behind the inch table: T_m = 0.70·S_ut·A_t to the nearest kip, with the tabulated stress area.
 *
 * @example
 * expect(inKip(pretensionOf(ksi(120), inch2(0.334)))).toBeCloseTo(28, 6);
 */
export const pretensionOf = (tensile: Megapascal, area: SquareMillimetre): Newton => kip(Math.round(inKip(N(0.7 * tensile * area))));
