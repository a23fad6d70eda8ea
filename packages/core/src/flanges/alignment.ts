import { inch, type Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';

export const alignmentSource: Source = { standard: 'ASME PCC-1', edition: '2013', clause: 'Appendix E', provenance: 'memory' };
export const b313Source: Source = { standard: 'ASME B31.3', edition: '2014', clause: '335.1.1, 335.2.3', provenance: 'memory' };

/** How well two flanges must meet before they are bolted. */
export const ALIGNMENT_LIMITS = {
  /** step between the inside or outside edges */
  centreline: inch(1 / 16),
  /** widest less narrowest gap, at the outside of the sealing surface */
  parallelism: inch(1 / 32),
  /** turn of one flange against the other, at the bolt holes */
  boltHoles: inch(1 / 8),
  /** gap between the faces at rest, in gasket thicknesses */
  gapInGaskets: 2,
  /** force to bring the flanges together, share of the total bolt load, and of one bolt's */
  force: 0.1,
  singleBoltForce: 0.2,
  source: alignmentSource,
} as const;

/** Piping: slope of a face against the design plane, 1/16 in per foot (1 mm in 200 mm), and threads a nut may fall short of full engagement. */
export const PIPING_ALIGNMENT = { faceSlope: 1 / 16 / 12, threadsShort: 1, source: b313Source } as const;

export interface AlignmentReading {
  readonly centreline: Millimetre;
  readonly widestGap: Millimetre;
  readonly narrowestGap: Millimetre;
  readonly boltHoles: Millimetre;
  readonly gasketThickness: Millimetre;
}
export type AlignmentFault = 'centreline' | 'parallelism' | 'boltHoles' | 'gap';

/**
 * Which limits a pair of flanges misses before bolting; empty when it may be closed.
 *
 * Source: ASME PCC-1:2013 Appendix E (from memory).
 *
 * @example
 * const reading = { centreline: inch(1 / 32), widestGap: inch(0.3), narrowestGap: inch(0.2), boltHoles: inch(0), gasketThickness: inch(0.175) };
 * expect(alignmentFaults(reading)).toEqual(['parallelism']);
 */
export function alignmentFaults({
  centreline,
  widestGap,
  narrowestGap,
  boltHoles,
  gasketThickness,
}: AlignmentReading): readonly AlignmentFault[] {
  const limits = ALIGNMENT_LIMITS;
  const faults: AlignmentFault[] = [];
  if (centreline > limits.centreline) faults.push('centreline');
  if (widestGap - narrowestGap > limits.parallelism) faults.push('parallelism');
  if (boltHoles > limits.boltHoles) faults.push('boltHoles');
  if (widestGap > limits.gapInGaskets * gasketThickness) faults.push('gap');
  return faults;
}
