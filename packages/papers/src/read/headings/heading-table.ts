import type { FieldOf, TableName } from '../tables/index.ts';

/** The headings of a language: complete, nothing else. */
export type HeadingTable = { readonly [T in TableName]: { readonly [K in FieldOf<T>]: readonly string[] } };

/** Headings of a language that fit several fields, with all of them. */
export type Unclear = { readonly [T in TableName]: Readonly<Record<string, readonly FieldOf<T>[]>> };
