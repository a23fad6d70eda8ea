import { inch, inInch, type Millimetre, mm } from '../quantity.ts';

/** Facing sketch of Table 2-5.2 and the column the gasket type belongs to; I for hard, II for soft gaskets. */
export type FacingSketch = '1a' | '1b' | '1c' | '1d' | '2' | '3' | '4' | '5' | '6';
export type FacingColumn = 'I' | 'II';

/** Contact width N, width w of nubbin, face or ring, gasket thickness T, as the sketch needs them. */
export interface FacingWidths {
  readonly contact?: Millimetre;
  readonly face?: Millimetre;
  readonly thickness?: Millimetre;
}

/**
 * Basic gasket seating width b₀.
 *
 * - 1a, 1b: N/2
 * - 1c, 1d: (w + T)/2, at most (w + N)/4
 * - 2: (w + N)/4 (I), (w + 3N)/8 (II)
 * - 3 and 5: N/4 (I), 3N/8 (II)
 * - 4: 3N/8 (I), 7N/16 (II)
 * - 6: w/8
 *
 * `undefined` where a width the sketch needs is missing. Source: ASME BPVC VIII-1 Appendix 2, Table 2-5.2 (from memory).
 *
 * @example
 * expect(inInch(basicSeatingWidth('2', 'I', { contact: inch(0.75), face: inch(0.25) }))).toBeCloseTo(0.25, 9);
 */
export function basicSeatingWidth(
  sketch: FacingSketch,
  column: FacingColumn,
  { contact, face, thickness }: FacingWidths,
): Millimetre | undefined {
  const hard = column === 'I';
  if (sketch === '6') return face === undefined ? undefined : mm(face / 8);
  if (contact === undefined) return undefined;
  switch (sketch) {
    case '1a':
    case '1b':
      return mm(contact / 2);
    case '1c':
    case '1d':
      return face === undefined || thickness === undefined ? undefined : mm(Math.min((face + thickness) / 2, (face + contact) / 4));
    case '2':
      return face === undefined ? undefined : mm(hard ? (face + contact) / 4 : (face + 3 * contact) / 8);
    case '3':
    case '5':
      return mm(hard ? contact / 4 : (3 * contact) / 8);
    case '4':
      return mm(hard ? (3 * contact) / 8 : (7 * contact) / 16);
  }
}

/** Basic widths up to this count in full. */
const NARROW = inch(0.25);

/**
 * Effective gasket seating width, inch form: b = b₀ up to 1/4 in, else b = 0.5·√b₀ (in).
 *
 * The metric form prints 2.52·√b₀ (mm) above 6 mm: 0.02 % apart where both apply. Source: ASME BPVC VIII-1 Appendix 2, Table 2-5.2.
 *
 * @example
 * expect(inInch(effectiveSeatingWidth(inch(0.3125)))).toBeCloseTo(0.2795, 4);
 */
export const effectiveSeatingWidth = (basic: Millimetre): Millimetre =>
  basic <= NARROW + 1e-9 ? basic : inch(0.5 * Math.sqrt(inInch(basic)));

/**
 * Diameter at which the gasket's load acts: the mean of the contact face up to b₀ = 1/4 in, else its outside diameter less 2b.
 *
 * Source: ASME BPVC VIII-1 Appendix 2, 2-3.
 *
 * @example
 * expect(inInch(gasketReactionDiameter(inch(17.75), inch(16.25)))).toBeCloseTo(17.1376, 3);
 */
export function gasketReactionDiameter(outer: Millimetre, inner: Millimetre, basic: Millimetre = mm((outer - inner) / 4)): Millimetre {
  return basic <= NARROW + 1e-9 ? mm((outer + inner) / 2) : mm(outer - 2 * effectiveSeatingWidth(basic));
}
