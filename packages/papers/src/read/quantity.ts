import {
  degrees,
  inch,
  kip,
  kN,
  ksi,
  lbf,
  lbfFt,
  type Megapascal,
  type Millimetre,
  MPa,
  mm,
  N,
  type Newton,
  type NewtonMillimetre,
  Nm,
  Nmm,
  type Notice,
  notice,
  type Outcome,
  type Place,
  psi,
  type Radian,
  refused,
} from '@clampwright/core';
import { type Decimals, readNumber } from './read-number.ts';

export interface ValueOf {
  readonly length: Millimetre;
  readonly force: Newton;
  readonly torque: NewtonMillimetre;
  readonly stress: Megapascal;
  readonly modulus: Megapascal;
  readonly angle: Radian;
  readonly share: number;
  readonly number: number;
}
export type Dimension = keyof ValueOf;

/** Units people write, by dimension; the first is named in messages. Compared without blanks, dots and case. */
const UNITS: { readonly [D in Dimension]: Readonly<Record<string, (value: number) => ValueOf[D]>> } = {
  length: { mm, cm: (value) => mm(value * 10), m: (value) => mm(value * 1000), in: inch, inch, '"': inch },
  force: { kN, N, kip, kips: kip, lbf, lb: lbf },
  torque: { N·m: Nm, Nm, kN·m: (value) => Nm(value * 1000), N·mm: Nmm, lbf·ft: lbfFt, ft·lbf: lbfFt, ft·lb: lbfFt, lb·ft: lbfFt },
  stress: { MPa, 'N/mm²': MPa, 'N/mm2': MPa, ksi, psi },
  modulus: { MPa, GPa: (value) => MPa(value * 1000), 'N/mm²': MPa, 'N/mm2': MPa, ksi, psi },
  angle: { '°': degrees, deg: degrees, grad: degrees },
  share: { '%': (value) => value / 100, '': (value) => value },
  number: { '': (value) => value },
};

const plain = (unit: string) => unit.replace(/[\s·.*-]/g, '').toLowerCase();
const LOOKUP = Object.fromEntries(
  Object.entries(UNITS).map(([dimension, units]) => [
    dimension,
    new Map(Object.entries(units).map(([unit, convert]) => [plain(unit), convert])),
  ]),
) as unknown as { readonly [D in Dimension]: ReadonlyMap<string, (value: number) => ValueOf[D]> };

export const unitsOf = (dimension: Dimension): string => Object.keys(UNITS[dimension]).filter(Boolean).join(', ');
export const isUnit = (dimension: Dimension, unit: string): boolean => LOOKUP[dimension].has(plain(unit));
export const isAnyUnit = (unit: string): boolean => Object.values(LOOKUP).some((units) => units.has(plain(unit)));

/** The units of a job where neither heading nor cell says otherwise. */
export const DEFAULT_UNIT: Readonly<Record<'metric' | 'US', Readonly<Record<Dimension, string>>>> = {
  metric: { length: 'mm', force: 'kN', torque: 'N·m', stress: 'MPa', modulus: 'MPa', angle: '°', share: '', number: '' },
  US: { length: 'in', force: 'kip', torque: 'lbf·ft', stress: 'ksi', modulus: 'ksi', angle: '°', share: '', number: '' },
};

/** Beyond these a figure is a slip of unit or digits. Own limits: mm, N, N·mm, MPa, rad. */
const LARGEST: Readonly<Record<Dimension, number>> = {
  length: 20_000,
  force: 20_000_000,
  torque: 100_000_000,
  stress: 2_500,
  modulus: 500_000,
  angle: 20,
  share: 1,
  number: 1_000_000,
};

/** A cell longer than this holds no number. */
const LONGEST = 80;

/** A cell that a spreadsheet would take for a formula. */
export const isFormula = (text: string): boolean =>
  /^[=@]|^[+-](?![\d.,])|^[+-][\d.,]+\s*[+*/^&(|]/.test(text.trim()) && text.trim().length > 1;

const ERROR = /^#(N\/A|NV|REF!|BEZUG!|DIV\/0!|VALUE!|WERT!|NAME\?|NUM!|ZAHL!|NULL!)$/i;

/** Is it a value, and neither a formula that was never worked out nor one that failed? */
export const isValue = (text: string): boolean => !isFormula(text) && !(text.startsWith('#') && ERROR.test(text));

/** Why a cell holds no value. */
export const notAValue = (text: string, place: Place): Notice =>
  isFormula(text) ? notice('cell-formula', {}, place) : notice('cell-error', {}, place);

/**
 * A positive quantity out of a cell: number, then a unit or the one of the heading. Decimal comma and point are both read; what
 * may be either is asked, not guessed.
 */
export function readQuantity<D extends Dimension>(
  text: string,
  dimension: D,
  unit: string | undefined,
  place: Place,
  decimals: Decimals,
): Outcome<ValueOf[D]> {
  if (!isValue(text)) return refused(notAValue(text, place));
  const parts = text.length > LONGEST ? null : /^\s*([+-]?[\d.,'’\s]*\d)\s*(.*?)\s*$/.exec(text);
  if (!parts) return refused(notANumber(dimension, place));
  const value = readNumber(parts[1]!, decimals);
  if (value === 'ambiguous') return refused(notice('number-ambiguous', { read: parts[1]! }, place));
  if (value === undefined) return refused(notANumber(dimension, place));
  const written = parts[2] === '' ? (unit ?? '') : parts[2]!;
  const convert = LOOKUP[dimension].get(plain(written));
  if (!convert) {
    return refused(
      written === ''
        ? notice('unit-missing', { wanted: unitsOf(dimension) }, place)
        : notice('unit-unknown', { unit: written, wanted: unitsOf(dimension) }, place),
    );
  }
  const converted = convert(value);
  if (!(converted > 0) || converted > LARGEST[dimension]) {
    return refused(notice('number-absurd', { wanted: 'a number', largest: largestText(dimension) }, place));
  }
  return { ok: true, value: converted };
}

function notANumber(dimension: Dimension, place: Place): Notice {
  const units = unitsOf(dimension);
  return units === '' ? notice('number-wanted', { wanted: 'a number' }, place) : notice('quantity-wanted', { units }, place);
}

/** A length with its sign; zero is a place like any other. */
export function readCoordinate(text: string, unit: string, place: Place, decimals: Decimals): Outcome<Millimetre> {
  if (/^\s*[+-]?0*([.,]0*)?\s*(\D*)$/.test(text) && /0/.test(text)) return { ok: true, value: mm(0) };
  const negative = /^\s*[-\u2212](.*)$/.exec(text);
  const read = readQuantity(negative?.[1] ?? text, 'length', unit, place, decimals);
  return read.ok && negative ? { ok: true, value: mm(-1 * read.value) } : read;
}

const largestText = (dimension: Dimension): string =>
  ({
    length: '20 m',
    force: '20 000 kN',
    torque: '100 000 N·m',
    stress: '2500 MPa',
    modulus: '500 GPa',
    angle: '1100°',
    share: '100 %',
    number: '1 000 000',
  })[dimension];
