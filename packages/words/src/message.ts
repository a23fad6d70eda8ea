import type { Measure, Param } from '@clampwright/core';
import { IntlMessageFormat } from 'intl-messageformat';
import { type Language, localeOf } from './language.ts';
import { say, type UnitSystem } from './units.ts';

const compiled = new Map<string, IntlMessageFormat>();

/** Fills an ICU message; measures are said in the reader's units. */
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
  const spoken = Object.fromEntries(
    Object.entries(params).map(([name, value]) => [name, isMeasure(value) ? say(value, units, language) : value]),
  );
  return String(message.format(spoken));
}
