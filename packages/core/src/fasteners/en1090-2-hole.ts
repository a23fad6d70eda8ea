import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

export type SteelworkHoleType = 'normal round' | 'oversize round' | 'short slotted' | 'long slotted';

/** A hole in steelwork, mm: round holes have equal width and length. */
export interface SteelworkHole {
  readonly width: Millimetre;
  readonly length: Millimetre;
  readonly source: Source;
}

const source: Source = { standard: 'EN 1090-2', edition: '2018', clause: 'Table 11', provenance: 'published' };

/** Nominal clearances, mm, over bolt diameter ranges; M12 is the smallest listed. */
const CLEARANCES = [
  { from: 12, below: 16, normal: 1, oversize: 3, shortSlot: 4 },
  { from: 16, below: 24, normal: 2, oversize: 4, shortSlot: 6 },
  { from: 24, below: 27, normal: 2, oversize: 6, shortSlot: 8 },
  { from: 27, below: Number.MAX_VALUE, normal: 3, oversize: 8, shortSlot: 10 },
] as const;

/**
 * Holes for bolts in steelwork: bolt diameter plus nominal clearance.
 *
 * - a slot is as wide as a normal round hole; its clearance acts on the overall length, 1.5 d for a long slot
 *
 * Valid for: M12 and above, not for fitted bolts; towers and masts take 0.5 mm less in normal round holes (the standard's note).
 * Source: EN 1090-2:2018 Table 11.
 *
 * @example
 * expect(steelworkHole(mm(24), 'oversize round').value.width).toBe(30);
 * expect(steelworkHole(mm(27), 'long slotted').value.length).toBe(67.5);
 */
export function steelworkHole(diameter: Millimetre, type: SteelworkHoleType = 'normal round'): Outcome<SteelworkHole> {
  const row = CLEARANCES.find(({ from, below }) => diameter >= from && diameter < below);
  if (!row) return refused(notice('hole-unknown', { standard: 'EN 1090-2', size: `M${diameter}` }));
  const round = mm(diameter + row.normal);
  switch (type) {
    case 'normal round':
      return done({ width: round, length: round, source });
    case 'oversize round':
      return done({ width: mm(diameter + row.oversize), length: mm(diameter + row.oversize), source });
    case 'short slotted':
      return done({ width: round, length: mm(diameter + row.shortSlot), source });
    case 'long slotted':
      return done({ width: round, length: mm(2.5 * diameter), source });
  }
}
