import { type Megapascal, type Millimetre, mm, mm2, N, type Newton, type SquareMillimetre } from '../quantity.ts';
import type { Source } from '../source.ts';

export type ThreadSeries = 'coarse' | 'fine' | 'UNC' | 'UNF' | '8UN';

/** One thread size out of a standard's list. */
export interface Thread {
  /** as the trade writes it: `M24`, `M24×2`, `3/4-10 UNC`, `1 1/8-8UN` */
  readonly designation: string;
  readonly series: ThreadSeries;
  readonly diameter: Millimetre;
  readonly pitch: Millimetre;
  /** stress area as the fastener standard prints it, where it does; loads of that standard use it */
  readonly printedStressArea?: SquareMillimetre;
  /** root area as the thread standard prints it (inch series), where it does */
  readonly printedRootArea?: SquareMillimetre;
  readonly source: Source;
}

export const isMetric = (thread: Thread): boolean => thread.series === 'coarse' || thread.series === 'fine';

/**
 * Basic pitch diameter of a 60° thread.
 *
 *     d₂ = d − 0.649 519 P        (0.649 519 = 3√3/8)
 *
 * - d `diameter`, P `pitch`, mm, basic
 *
 * Source: ISO 724:1993; ASME B1.1 (same profile).
 *
 * @example
 * expect(pitchDiameter(mm(24), mm(3))).toBeCloseTo(22.051, 3);
 */
export const pitchDiameter = (diameter: Millimetre, pitch: Millimetre): Millimetre => mm(diameter - ((3 * Math.sqrt(3)) / 8) * pitch);

/**
 * Root diameter of an external ISO metric thread.
 *
 *     d₃ = d − 1.226 869 P        (1.226 869 = 17√3/24)
 *
 * Not the minor diameter D₁ of the nut. Source: ISO 68-1, ISO 898-1:2013 clause 9.1.6.1.
 *
 * @example
 * expect(rootDiameter(mm(24), mm(3))).toBeCloseTo(20.319, 3);
 */
export const rootDiameter = (diameter: Millimetre, pitch: Millimetre): Millimetre => mm(diameter - ((17 * Math.sqrt(3)) / 24) * pitch);

/**
 * Basic minor diameter of the internal thread.
 *
 *     D₁ = d − 1.082 532 P        (1.082 532 = 5√3/8)
 *
 * Source: ISO 724:1993; ASME B1.1.
 *
 * @example
 * expect(internalMinorDiameter(mm(24), mm(3))).toBeCloseTo(20.752, 3);
 */
export const internalMinorDiameter = (diameter: Millimetre, pitch: Millimetre): Millimetre =>
  mm(diameter - ((5 * Math.sqrt(3)) / 8) * pitch);

/**
 * Diameter of the stress area: d_S = (d₂ + d₃)/2, mm. Source: ISO 898-1:2013 clause 9.1.6.1.
 *
 * @example
 * expect(stressDiameter(mm(24), mm(3))).toBeCloseTo(21.185, 3);
 */
export const stressDiameter = (diameter: Millimetre, pitch: Millimetre): Millimetre =>
  mm((pitchDiameter(diameter, pitch) + rootDiameter(diameter, pitch)) / 2);

const circle = (diameter: number): SquareMillimetre => mm2((Math.PI / 4) * diameter ** 2);

/**
 * Stress area from the formula, unrounded.
 *
 *     A_s = π/4 · d_S²            d_S = (d₂ + d₃)/2
 *
 * Metric threads only: the inch formula takes a deeper root, see {@link inchStressArea}.
 *
 * Source: ISO 898-1:2013 clause 9.1.6.1.
 *
 * @example
 * expect(stressArea(mm(24), mm(3))).toBeCloseTo(352.5, 1);
 */
export const stressArea = (diameter: Millimetre, pitch: Millimetre): SquareMillimetre => circle(stressDiameter(diameter, pitch));

/**
 * Reference minor diameter of an external unified thread with rounded root (UNR), for gauging.
 *
 *     d₃ = D − 1.190 784 P        (1.190 784 = 11√3/16)
 *
 * Not the diameter of the root area. Source: ASME B1.1:2003.
 *
 * @example
 * expect(inInch(externalMinorDiameter(inch(1), inch(1 / 8)))).toBeCloseTo(0.8512, 4);
 */
export const externalMinorDiameter = (diameter: Millimetre, pitch: Millimetre): Millimetre =>
  mm(diameter - ((11 * Math.sqrt(3)) / 16) * pitch);

/**
 * Diameter of the root area of an inch thread: D − 2h_b = D − 1.299 038 P (1.299 038 = 3√3/4), mm. Source: ASME B1.1:2003.
 *
 * @example
 * expect(inInch(rootAreaDiameter(inch(1), inch(1 / 8)))).toBeCloseTo(0.8376, 4);
 */
export const rootAreaDiameter = (diameter: Millimetre, pitch: Millimetre): Millimetre => mm(diameter - ((3 * Math.sqrt(3)) / 4) * pitch);

/**
 * Tensile stress area of a unified inch thread.
 *
 *     A_t = π/4 · (D − 0.9743/n)²            0.9743 = (0.649 519 + 1.299 038)/2
 *
 * - D `diameter`, 1/n `pitch`, mm. The mean of pitch diameter and root-area diameter; about 0.7 % less than the metric formula gives.
 *
 * Valid for: up to 100 ksi tensile strength; above, ASME B1.1 also gives a form by the minimum pitch diameter. The printed tables use this one.
 * Source: ASME B1.1:2003.
 *
 * @example
 * expect(inInch2(inchStressArea(inch(3 / 4), inch(1 / 10)))).toBeCloseTo(0.334, 3);
 */
export const inchStressArea = (diameter: Millimetre, pitch: Millimetre): SquareMillimetre =>
  circle((pitchDiameter(diameter, pitch) + rootAreaDiameter(diameter, pitch)) / 2);

/**
 * Root area of an inch flange stud.
 *
 *     A_r = π/4 · (D − 1.299 038 P)²        (1.299 038 = 3√3/4)
 *
 * The area that flange codes put bolt stress on: "area at D − 2h_b" of ASME B1.1. Not the nut's minor diameter.
 *
 * @example
 * expect(rootArea(inch(1), inch(1 / 8)) / 25.4 ** 2).toBeCloseTo(0.551, 3);
 */
export const rootArea = (diameter: Millimetre, pitch: Millimetre): SquareMillimetre => circle(rootAreaDiameter(diameter, pitch));

/** Shank area π/4·d², mm². */
export const shankArea = (diameter: Millimetre): SquareMillimetre => circle(diameter);

/** The stress area a load of the fastener standard is built on: printed where the standard prints one, else from the formula. */
export const nominalStressArea = (thread: Thread): SquareMillimetre =>
  thread.printedStressArea ?? (isMetric(thread) ? stressArea : inchStressArea)(thread.diameter, thread.pitch);

/** The root area bolt stress of a flange code acts on: printed where the standard prints one, else from the formula. */
export const nominalRootArea = (thread: Thread): SquareMillimetre => thread.printedRootArea ?? rootArea(thread.diameter, thread.pitch);

/** Diameter of the section that carries tension: the metric stress diameter, or the inch one where the series says so. */
export const tensionDiameter = ({
  diameter,
  pitch,
  series,
}: Pick<Thread, 'diameter' | 'pitch'> & { readonly series?: ThreadSeries }): Millimetre =>
  series === 'UNC' || series === 'UNF' || series === '8UN'
    ? mm((pitchDiameter(diameter, pitch) + rootAreaDiameter(diameter, pitch)) / 2)
    : stressDiameter(diameter, pitch);

/** Force of a stress on an area: F = σ·A, N. */
export const forceOn = (area: SquareMillimetre, stress: Megapascal): Newton => N(area * stress);
