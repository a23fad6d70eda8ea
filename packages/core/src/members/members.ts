import type { Megapascal, Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';

/** A gasket between two faces. What is not given comes from the flange, or from the list of kinds. */
export interface GasketGiven {
  readonly kind: GasketKind;
  readonly thickness?: Millimetre;
  /** on first loading */
  readonly modulus?: Megapascal;
  /** when unloaded; stiffer than on first loading */
  readonly unloadingModulus?: Megapascal;
  readonly inner?: Millimetre;
  readonly outer?: Millimetre;
  /** window of stress on the gasket's area when assembled: below it leaks, above it is crushed. Maker's data (EN 13555, Q_smax) */
  readonly leastStress?: Megapascal;
  readonly greatestStress?: Megapascal;
}

export const GASKET_KINDS = ['fibre sheet', 'PTFE sheet', 'graphite sheet', 'spiral wound', 'grooved metal', 'rubber', 'other'] as const;
export type GasketKind = (typeof GASKET_KINDS)[number];

/** How the shell or pipe goes on from a flange. */
export interface Wall {
  readonly thickness: Millimetre;
  readonly side: 'inside' | 'outside';
}

/** What the bolts of a joint clamp, as far as it decides how bolts act on each other. Diameters, not radii. */
export type Members =
  | { readonly kind: 'standard flange'; readonly flange: string; readonly gasket: GasketGiven }
  | {
      readonly kind: 'ring';
      readonly inner: Millimetre;
      readonly outer: Millimetre;
      readonly thickness: Millimetre;
      readonly wall: Wall;
      readonly hub?: { readonly outer: Millimetre; readonly length: Millimetre };
      /** the land the halves touch on; the whole face where neither land nor gasket is given */
      readonly land?: { readonly inner: Millimetre; readonly outer: Millimetre; readonly height: Millimetre };
      readonly gasket?: GasketGiven;
    }
  | {
      readonly kind: 'plates';
      readonly width: Millimetre;
      readonly height: Millimetre;
      readonly thickness: Millimetre;
      readonly support: 'mirrored' | 'ground';
      readonly bed: { readonly thickness: Millimetre; readonly modulus: Megapascal };
    }
  /** closing at bolt i per unit force in bolt j, mm/N, members alone */
  | { readonly kind: 'matrix'; readonly rows: readonly (readonly number[])[]; readonly source: Source };

/** Steel, where nothing else is said. */
export const STEEL = { modulus: 205_000, poisson: 0.3 } as const;
