import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ corrects: field.hash, reason: field.text });
export type Correction = z.infer<typeof body>;

/**
 * An entry was wrong. It stays in the book, struck through, and no longer counts; what is true instead is told by an entry of its
 * own. The fold looks for these before anything else.
 */
export const correction = defineKind<Correction>({ version: 1, body, about: () => ({}), fold: {} });
