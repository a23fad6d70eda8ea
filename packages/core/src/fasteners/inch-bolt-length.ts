import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inch, inInch, type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import { F436_THICKNESS } from './f436-washer.ts';
import { inchSize } from './inch-size.ts';

export const addToGripSource: Source = { standard: 'RCSC', edition: '2014', clause: 'Table C-2.2', provenance: 'memory' };
export const structuralThreadSource: Source = { standard: 'ASME B18.2.6', edition: '2010', clause: 'thread length', provenance: 'memory' };

/** Structural bolt: size, length to add to the grip, thread length, in. */
// biome-ignore format: a table is read by its columns
const ROWS: readonly (readonly [size: string, addToGrip: string, threadLength: string])[] = [
  ['1/2',   '11/16', '1'],
  ['5/8',   '7/8',   '1 1/4'],
  ['3/4',   '1',     '1 3/8'],
  ['7/8',   '1 1/8', '1 1/2'],
  ['1',     '1 1/4', '1 3/4'],
  ['1 1/8', '1 1/2', '2'],
  ['1 1/4', '1 5/8', '2'],
  ['1 3/8', '1 3/4', '2 1/4'],
  ['1 1/2', '1 7/8', '2 1/4'],
];

/** Heavy hex structural bolts: what to add to the grip for nut and point, and the length of thread (shorter than a cap screw's). */
export const STRUCTURAL_LENGTHS = ROWS.map(([size, addToGrip, threadLength]) => ({
  diameter: inch(inchSize(size)!),
  addToGrip: inch(inchSize(addToGrip)!),
  threadLength: inch(inchSize(threadLength)!),
}));

function row(diameter: Millimetre): Outcome<(typeof STRUCTURAL_LENGTHS)[number]> {
  const found = STRUCTURAL_LENGTHS.find((one) => Math.abs(one.diameter - diameter) < 1e-6);
  return found ? done(found) : refused(notice('size-not-in-table', { size: `${inInch(diameter)} in`, table: addToGripSource.standard }));
}

/**
 * Length to add to the grip of a structural bolt: the table's value, and 5/32 in for each F436 washer.
 *
 * @example
 * expect(inInch(addToGrip(inch(3 / 4), 1).value)).toBeCloseTo(1 + 5 / 32, 9);
 */
export function addToGrip(diameter: Millimetre, washers = 0): Outcome<Millimetre> {
  const found = row(diameter);
  return found.ok ? done(mm(found.value.addToGrip + washers * F436_THICKNESS)) : found;
}

/** Length of thread of a heavy hex structural bolt. Source: ASME B18.2.6:2010 (from memory). */
export function structuralThreadLength(diameter: Millimetre): Outcome<Millimetre> {
  const found = row(diameter);
  return found.ok ? done(found.value.threadLength) : found;
}

/**
 * Length of a structural bolt: grip and what is added to it, rounded up to the next 1/4 in, above 5 in to the next 1/2 in.
 *
 * Source: RCSC 2014, commentary to 2.3.2 (from memory; some suppliers keep quarter inches to 6 in).
 *
 * @example
 * expect(inInch(structuralBoltLength(inch(3 / 4), inch(1.6), 1).value)).toBeCloseTo(3, 9);
 */
export function structuralBoltLength(diameter: Millimetre, grip: Millimetre, washers = 0): Outcome<Millimetre> {
  const added = addToGrip(diameter, washers);
  if (!added.ok) return added;
  const least = inInch(mm(grip + added.value));
  const step = least > 5 ? 0.5 : 0.25;
  return done(inch(Math.ceil(least / step - 1e-9) * step));
}

/**
 * Length of thread of a hex cap screw: L_T = 2 D + 1/4 in up to 6 in of length, 2 D + 1/2 in above. Source: ASME B18.2.1:2012 (from memory).
 *
 * @example
 * expect(inInch(capScrewThreadLength(inch(1), inch(7)))).toBeCloseTo(2.5, 9);
 */
export const capScrewThreadLength = (diameter: Millimetre, length: Millimetre): Millimetre =>
  mm(2 * diameter + inch(inInch(length) <= 6 + 1e-9 ? 0.25 : 0.5));
