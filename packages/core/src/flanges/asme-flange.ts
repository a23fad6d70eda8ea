import { findInchThread } from '../fasteners/find-inch-thread.ts';
import { inchSize } from '../fasteners/inch-size.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inch, type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Bolting and main dimensions of a class-rated flange. */
export interface AsmeFlange {
  readonly standard: 'ASME B16.5' | 'ASME B16.47 Series A';
  readonly nps: string;
  readonly flangeClass: number;
  readonly outsideDiameter: Millimetre;
  readonly boltCircle: Millimetre;
  readonly bolts: number;
  /** designation of the stud's thread: `7/8-9 UNC`, `1 1/8-8UN` */
  readonly bolt: string;
  readonly boltDiameter: Millimetre;
  /** bolt and 1/8 in */
  readonly hole: Millimetre;
  /** least thickness; B16.5 (2003 and later) leaves the raised face out */
  readonly thickness: Millimetre;
  readonly raisedFace: Millimetre;
  readonly raisedFaceHeight: Millimetre;
  /** stud length between raised faces, as printed */
  readonly studLength: Millimetre;
  /** ring number of a ring-joint facing */
  readonly ring?: string;
  readonly source: Source;
}

/** Raised face: 0.06 in up to Class 300, 0.25 in above. */
export const raisedFaceHeight = (flangeClass: number): Millimetre => inch(flangeClass <= 300 ? 0.06 : 0.25);

/** What a bolt size on a flange brings with it: UNC up to 1 in, 8UN above, hole 1/8 in larger. */
export function flangeBolt(size: string) {
  const boltDiameter = inch(inchSize(size)!);
  return { bolt: findInchThread(size, 'flange-stud')!.designation, boltDiameter, hole: mm(boltDiameter + inch(1 / 8)) };
}

/** The flange of an NPS (`2-1/2`, `2 1/2`, `2.5`) and class out of one standard's list. */
export function flangeIn(
  list: readonly AsmeFlange[],
  standard: AsmeFlange['standard'],
  nps: string,
  flangeClass: number,
): Outcome<AsmeFlange> {
  const wanted = inchSize(nps.replace(/^\s*NPS\s*/i, ''));
  const flange = list.find((one) => one.flangeClass === flangeClass && inchSize(one.nps) === wanted);
  return flange ? done(flange) : refused(notice('flange-unknown', { standard, size: `NPS ${nps}`, rating: `Class ${flangeClass}` }));
}
