import type { Measure, Param } from '@clampwright/core';
import { IntlMessageFormat } from 'intl-messageformat';
import { type Language, localeOf } from './language.ts';
import { say, type UnitSystem } from './units.ts';

/** As many digits as the number has, and nothing between thousands. */
const EXACT: Intl.NumberFormatOptions = { maximumFractionDigits: 20, useGrouping: false };

const compiled = new Map<string, IntlMessageFormat>();

/** Fills an ICU message; measures are said in the reader's units, figures with the decimal sign of the language. */
export function fill(
  text: string,
  params: Readonly<Record<string, Param>>,
  units: UnitSystem = 'metric',
  language: Language = 'en',
): string {
  const key = `${language}\n${text}`;
  const message = compiled.get(key) ?? new IntlMessageFormat(text, localeOf(language));
  compiled.set(key, message);
  const isMeasure = (value: Param): value is Measure => typeof value === 'object';
  // a whole number may be counted by a plural and stays one
  const isFraction = (value: Param) => typeof value === 'number' && !Number.isInteger(value);
  const spoken = Object.fromEntries(
    Object.entries(params).map(([name, value]) => [
      name,
      isMeasure(value) ? say(value, units, language) : isFraction(value) ? value.toLocaleString(localeOf(language), EXACT) : value,
    ]),
  );
  return String(message.format(spoken));
}
