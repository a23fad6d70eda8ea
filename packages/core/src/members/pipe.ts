import { inch, type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

export interface Pipe {
  readonly outside: Millimetre;
  readonly wall: Millimetre;
  readonly source: Source;
}

/** NPS, outside diameter, standard weight wall; in. */
const NPS: readonly (readonly [nps: number, outside: number, wall: number])[] = [
  [0.5, 0.84, 0.109],
  [0.75, 1.05, 0.113],
  [1, 1.315, 0.133],
  [1.25, 1.66, 0.14],
  [1.5, 1.9, 0.145],
  [2, 2.375, 0.154],
  [2.5, 2.875, 0.203],
  [3, 3.5, 0.216],
  [3.5, 4, 0.226],
  [4, 4.5, 0.237],
  [5, 5.563, 0.258],
  [6, 6.625, 0.28],
  [8, 8.625, 0.322],
  [10, 10.75, 0.365],
  [12, 12.75, 0.375],
];
/** DN, outside diameter, wall of a welding neck; mm. */
const DN: readonly (readonly [dn: number, outside: number, wall: number])[] = [
  [10, 17.2, 2],
  [15, 21.3, 2],
  [20, 26.9, 2.3],
  [25, 33.7, 2.6],
  [32, 42.4, 2.6],
  [40, 48.3, 2.6],
  [50, 60.3, 2.9],
  [65, 76.1, 2.9],
  [80, 88.9, 3.2],
  [100, 114.3, 3.6],
  [125, 139.7, 4],
  [150, 168.3, 4.5],
  [200, 219.1, 6.3],
  [250, 273, 6.3],
  [300, 323.9, 7.1],
  [350, 355.6, 8],
  [400, 406.4, 8],
  [450, 457, 8],
  [500, 508, 8],
  [600, 610, 8.8],
  [700, 711, 8.8],
  [800, 813, 10],
  [900, 914, 10],
  [1000, 1016, 10],
];

/**
 * Pipe that a class-rated flange belongs to: from 14 in on the outside diameter is the NPS, the wall 3/8 in (standard weight).
 * Source: ASME B36.10M, from memory.
 *
 * @example
 * expect(inInch(npsPipe(8).outside)).toBeCloseTo(8.625, 6);
 * expect(inInch(npsPipe(24).outside)).toBeCloseTo(24, 6);
 */
export function npsPipe(nps: number): Pipe | undefined {
  const source: Source = { standard: 'ASME B36.10M', clause: 'standard weight', provenance: 'memory' };
  const row = NPS.find(([size]) => size === nps);
  if (row) return { outside: inch(row[1]), wall: inch(row[2]), source };
  return nps >= 14 ? { outside: inch(nps), wall: inch(0.375), source } : undefined;
}

/** Pipe that a PN flange belongs to. Source: EN 10220 series 1, walls as on welding necks of EN 1092-1; from memory. */
export function dnPipe(dn: number): Pipe | undefined {
  const row = DN.find(([size]) => size === dn);
  return row && { outside: mm(row[1]), wall: mm(row[2]), source: { standard: 'EN 10220', clause: 'series 1', provenance: 'memory' } };
}
