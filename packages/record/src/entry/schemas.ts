import { z } from './field.ts';
import { KINDS } from './kinds/index.ts';

/** The body of every kind of entry as JSON Schema (draft 2020-12), by `kind-version`: for readers that are not ours. */
export const bodySchemas = (): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(KINDS).map(([name, { version, body }]) => [`${name}-${version}`, z.toJSONSchema(body, { unrepresentable: 'any' })]),
  );
