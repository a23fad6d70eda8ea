import { inch, ksi } from '../quantity.ts';
import type { Strength } from './grade.ts';

/** Strength as inch standards print it: nominal diameters above and up to, in; proof stress, yield, tensile strength least and greatest, ksi. */
export type InchRange = readonly [
  above: number,
  upTo: number,
  proof: number | null,
  yieldStrength: number | null,
  tensile: number,
  tensileMax?: number,
];

export const inchStrength = ([above, upTo, proof, yieldStrength, tensile, tensileMax]: InchRange): Strength => ({
  above: inch(above),
  upTo: inch(upTo),
  proof: proof === null ? null : ksi(proof),
  yield: yieldStrength === null ? null : ksi(yieldStrength),
  tensile: ksi(tensile),
  ...(tensileMax === undefined ? {} : { tensileMax: ksi(tensileMax) }),
});
