import { envelope } from './envelope.ts';
import { z } from './field.ts';
import type { EntryKind } from './kind.ts';
import { KINDS } from './kinds/index.ts';

/** The body of every kind of entry as JSON Schema (draft 2020-12), by `kind-version`: for readers that are not ours. */
export const bodySchemas = (): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    Object.entries(KINDS).map(([name, { version, body }]) => [`${name}-${version}`, z.toJSONSchema(body, { unrepresentable: 'any' })]),
  );

/**
 * A whole entry as JSON Schema (draft 2020-12): the envelope, and the body of each kind in the versions that are read now. Other kinds and
 * versions are let through, as readers have to. Dates and hashes are text here; that they are sound is for `readEntry` to say.
 */
export const entrySchema = (): unknown => ({
  $id: 'clampwright-entry-1',
  title: 'Entry of a bolting log, format 1',
  ...z.toJSONSchema(envelope, { unrepresentable: 'any' }),
  allOf: Object.entries(KINDS).map(([kind, { version, body, ...more }]) => {
    const { since = version } = more as Partial<EntryKind<unknown>>;
    const told = Object.entries(z.toJSONSchema(body, { unrepresentable: 'any' })).filter(([key]) => key !== '$schema');
    return Object.fromEntries([
      [
        'if',
        {
          properties: { kind: { const: kind }, version: since === version ? { const: version } : { minimum: since, maximum: version } },
          required: ['kind', 'version'],
        },
      ],
      // oxlint-disable-next-line unicorn/no-thenable -- the word is JSON Schema’s
      ['then', { properties: { body: Object.fromEntries(told) } }],
    ]);
  }),
});
