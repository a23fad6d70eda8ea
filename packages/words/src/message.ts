import type { Measure, Param } from '@clampwright/core';
import { IntlMessageFormat } from 'intl-messageformat';
import { say, type UnitSystem } from './units.ts';

const compiled = new Map<string, IntlMessageFormat>();

/** Fills an ICU message; measures are said in the reader's units. */
export function fill(text: string, params: Readonly<Record<string, Param>>, units: UnitSystem = 'metric'): string {
  const message = compiled.get(text) ?? new IntlMessageFormat(text, 'en');
  compiled.set(text, message);
  const isMeasure = (value: Param): value is Measure => typeof value === 'object';
  const spoken = Object.fromEntries(Object.entries(params).map(([name, value]) => [name, isMeasure(value) ? say(value, units) : value]));
  return String(message.format(spoken));
}
