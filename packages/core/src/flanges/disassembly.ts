import { inch, type Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';

export const disassemblySource: Source = { standard: 'ASME PCC-1', edition: '2013', clause: 'section 15', provenance: 'memory' };

/** When bolts are loosened in steps, and to which share of the load found. */
export const DISASSEMBLY = {
  /** flange outside diameter above this, with a thickness above that */
  outsideDiameter: inch(24),
  thickness: inch(5),
  /** bolts of this size and larger */
  boltDiameter: inch(1.75),
  firstShare: 0.6,
  secondShare: 0.3,
  source: disassemblySource,
} as const;

export interface DisassemblyInput {
  readonly outsideDiameter: Millimetre;
  readonly thickness: Millimetre;
  readonly boltDiameter: Millimetre;
  /** might a part be harmed, or is a pipe known to be under strain? */
  readonly delicate?: boolean;
}

/**
 * Must this joint be loosened in steps across the flange (to about 60 %, then 30 %, gap checked after each) instead of bolt by bolt?
 *
 * A large joint that is also thick, or large bolts, or anything that loosening one bolt at a time could harm. Residual pressure and pipe strain load the
 * last bolts: no pressure must be proved first, whatever the answer. Source: ASME PCC-1:2013 section 15 (from memory).
 *
 * @example
 * expect(loosenInSteps({ outsideDiameter: inch(41), thickness: inch(5.5), boltDiameter: inch(1.5) })).toBe(true);
 * expect(loosenInSteps({ outsideDiameter: inch(41), thickness: inch(4), boltDiameter: inch(1.5) })).toBe(false);
 */
export const loosenInSteps = ({ outsideDiameter, thickness, boltDiameter, delicate = false }: DisassemblyInput): boolean =>
  delicate ||
  boltDiameter >= DISASSEMBLY.boltDiameter ||
  (outsideDiameter > DISASSEMBLY.outsideDiameter && thickness > DISASSEMBLY.thickness);
