import { type Megapascal, type Millimetre, MPa, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import type { GasketGiven, GasketKind } from './members.ts';

interface Typical {
  readonly thickness: Millimetre;
  readonly modulus: Megapascal;
}

/** Order of magnitude on first loading to some 40 MPa; the maker's EN 13555 data replace them. */
const TYPICAL: Readonly<Record<Exclude<GasketKind, 'other'>, Typical>> = {
  'fibre sheet': { thickness: mm(2), modulus: MPa(600) },
  'PTFE sheet': { thickness: mm(3), modulus: MPa(300) },
  'graphite sheet': { thickness: mm(2), modulus: MPa(400) },
  'spiral wound': { thickness: mm(4.5), modulus: MPa(800) },
  'grooved metal': { thickness: mm(4), modulus: MPa(1500) },
  rubber: { thickness: mm(3), modulus: MPa(60) },
};
export const TYPICAL_GASKET_SOURCE: Source = { standard: 'order of magnitude by kind of gasket', provenance: 'memory' };

/** Thickness and modulus of a gasket: as given, else typical of its kind. `undefined`: nothing is typical of the kind, and too little is given. */
export function gasketStiffness(given: GasketGiven): (Typical & { readonly assumed: boolean }) | undefined {
  const typical = given.kind === 'other' ? undefined : TYPICAL[given.kind];
  const [thickness, modulus] = [given.thickness ?? typical?.thickness, given.modulus ?? typical?.modulus];
  if (thickness === undefined || modulus === undefined) return undefined;
  return { thickness, modulus, assumed: given.modulus === undefined };
}
