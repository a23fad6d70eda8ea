import type { LookedAt, Notice } from '@clampwright/core';
import { z } from 'zod';
import { load, type OpenFile } from './open-file.ts';
import { checkValue, readYaml } from './yaml-file.ts';
import { between, word } from './yaml-values.ts';

const fileSchema = z.strictObject({
  seed: between(0, Number.MAX_SAFE_INTEGER, true),
  size: between(1, 10_000_000, true).optional(),
  wrench: word.optional(),
  found: z.array(z.unknown()).default([]),
});
const foundSchema = z.strictObject({ joint: word, bolt: between(1, 2000, true), conforms: z.boolean() });

/** What an inspector wrote down: the seed of the draw, the wrench, and what was found at each bolt. */
export interface ReadInspection {
  readonly seed: number;
  readonly size?: number;
  readonly wrench?: string;
  readonly looked: readonly LookedAt[];
}

/** An inspection's YAML file; every fault with its place, and nothing judged while there is one. */
export function readInspection(
  open: OpenFile,
  file: string,
): { readonly inspection?: ReadInspection; readonly notices: readonly Notice[] } {
  const bytes = load(open, file);
  const read = bytes.ok ? readYaml(bytes.value, file, fileSchema) : bytes;
  if (!read.ok) return { notices: read.notices };
  const { value, at, notices: remarks } = read.value;
  const notices: Notice[] = [...remarks];
  const looked = value.found.flatMap((given, index): LookedAt[] => {
    const entry = checkValue(foundSchema, given, at, ['found', index]);
    if (entry.ok) return [entry.value];
    notices.push(...entry.notices);
    return [];
  });
  if (notices.length > 0) return { notices };
  const { seed, size, wrench } = value;
  return { inspection: { seed, looked, ...(size === undefined ? {} : { size }), ...(wrench === undefined ? {} : { wrench }) }, notices };
}
