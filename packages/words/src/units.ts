import {
  inDegrees,
  inInch,
  inKilonewton,
  inKip,
  inKsi,
  inLbfFt,
  inNewtonMetre,
  type Measure,
  type NewtonMillimetre,
} from '@clampwright/core';

/** Units are fixed per job; rounding is for display only. */
export type UnitSystem = 'metric' | 'US';

interface Shown {
  readonly value: number;
  readonly unit: string;
  readonly digits: number;
}

const torqueDigits = (value: number) => (Math.abs(value) < 20 ? 1 : 0);

/** A measure as people of that unit system read it, with the digits worth showing. */
const SHOWN: Record<UnitSystem, { readonly [D in Measure['dimension']]: (value: number) => Shown }> = {
  metric: {
    force: (value) => ({ value: inKilonewton(value as never), unit: 'kN', digits: Math.abs(value) < 20_000 ? 1 : 0 }),
    torque: (value) => {
      const inNm = inNewtonMetre(value as NewtonMillimetre);
      return { value: inNm, unit: 'N·m', digits: torqueDigits(inNm) };
    },
    length: (value) => ({ value, unit: 'mm', digits: Math.abs(value) < 10 ? 2 : 1 }),
    stress: (value) => ({ value, unit: 'MPa', digits: 0 }),
    angle: (value) => ({ value: inDegrees(value as never), unit: '°', digits: 0 }),
    percent: (value) => ({ value: value * 100, unit: '%', digits: Math.abs(value) < 0.1 ? 1 : 0 }),
  },
  US: {
    force: (value) => ({ value: inKip(value as never), unit: 'kip', digits: 1 }),
    torque: (value) => {
      const inFootPounds = inLbfFt(value as NewtonMillimetre);
      return { value: inFootPounds, unit: 'lbf·ft', digits: torqueDigits(inFootPounds) };
    },
    length: (value) => ({ value: inInch(value as never), unit: 'in', digits: 3 }),
    stress: (value) => ({ value: inKsi(value as never), unit: 'ksi', digits: 1 }),
    angle: (value) => ({ value: inDegrees(value as never), unit: '°', digits: 0 }),
    percent: (value) => ({ value: value * 100, unit: '%', digits: Math.abs(value) < 0.1 ? 1 : 0 }),
  },
};

const formats = new Map<string, Intl.NumberFormat>();
function numberFormat(language: string, digits: number): Intl.NumberFormat {
  const key = `${language}/${digits}`;
  const known = formats.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(language, { maximumFractionDigits: digits, useGrouping: false });
  formats.set(key, made);
  return made;
}

/** The number alone, in the reader's units: `812`. */
export function figure({ dimension, value }: Measure, units: UnitSystem = 'metric', language = 'en'): string {
  const shown = SHOWN[units][dimension](value);
  return numberFormat(language, shown.digits).format(shown.value);
}

export const unitOf = ({ dimension, value }: Measure, units: UnitSystem = 'metric'): string => SHOWN[units][dimension](value).unit;

/** Number and unit, with a no-break space: `812 N·m`, `90°`. */
export function say(measure: Measure, units: UnitSystem = 'metric', language = 'en'): string {
  const unit = unitOf(measure, units);
  return `${figure(measure, units, language)}${unit === '°' ? '' : '\u00a0'}${unit}`;
}
