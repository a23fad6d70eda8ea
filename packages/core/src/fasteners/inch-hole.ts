import { inch, inInch, type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

export type StructuralHole = 'standard' | 'oversized' | 'short-slotted' | 'long-slotted';
export type HoleEdition = '2014' | '2020';

/** A round hole has a width only. */
export interface InchHole {
  readonly width: Millimetre;
  readonly length?: Millimetre;
  readonly source: Source;
}

const sources: Readonly<Record<HoleEdition, Source>> = {
  '2014': { standard: 'RCSC', edition: '2014', clause: 'Table 3.1', provenance: 'memory' },
  '2020': { standard: 'RCSC', edition: '2020', clause: 'Table 3.1; AISC 360-16 Table J3.3', provenance: 'memory' },
};

/**
 * Nominal hole of a structural bolt, 1/2 in and up.
 *
 * - standard: d + 1/16 in; since 2020 (AISC 360-16) d + 1/8 in from 1 in
 * - oversized: d + 1/8 (1/2 in), 3/16 (5/8 to 7/8), 1/4 (1 in), 5/16 (1 1/8 and up)
 * - slots: width of the standard hole; short-slotted length d + 3/16, 1/4 (5/8 to 7/8), 5/16 (1 in), 3/8 (1 1/8 and up); long-slotted 2.5 d
 *
 * Source: RCSC Table 3.1, AISC 360 Table J3.3 (from memory); the edition matters from 1 in up.
 *
 * @example
 * expect(inInch(structuralInchHole(inch(3 / 4), 'standard').width)).toBeCloseTo(13 / 16, 9);
 * expect(inInch(structuralInchHole(inch(1), 'standard', '2020').width)).toBeCloseTo(1.125, 9);
 */
export function structuralInchHole(diameter: Millimetre, hole: StructuralHole, edition: HoleEdition = '2014'): InchHole {
  const d = inInch(diameter);
  const plus = (sixteenths: number) => mm(diameter + inch(sixteenths / 16));
  const bySize = (half: number, middle: number, one: number, large: number) =>
    d < 0.6 ? half : d < 0.99 ? middle : d < 1.01 ? one : large;
  const width = plus(edition === '2020' && d > 0.99 ? 2 : 1);
  const source = sources[edition];
  switch (hole) {
    case 'standard':
      return { width, source };
    case 'oversized':
      return { width: plus(bySize(2, 3, 4, 5)), source };
    case 'short-slotted':
      return { width, length: plus(bySize(3, 4, 5, 6)), source };
    case 'long-slotted':
      return { width, length: mm(2.5 * diameter), source };
  }
}
