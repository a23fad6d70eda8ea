import type { Param } from '@clampwright/core';
import type { Language } from '../language.ts';
import { fill } from '../message.ts';

export type Params = Readonly<Record<string, Extract<Param, string | number>>>;

/** Fills messages of one language. */
export const filler =
  (language: Language) =>
  (text: string, params: Params = {}): string =>
    fill(text, params, 'metric', language);
