import { expect, test } from 'vitest';
import { field } from '../entry/field.ts';
import { KINDS } from '../entry/kinds/index.ts';
import { namedBy } from './format.ts';

/** Fields of a kind's body that are hashes, present or not. */
function hashFields(body: unknown): string[] {
  const { shape } = (body as { readonly _zod: { readonly def: { readonly shape: Record<string, unknown> } } })._zod.def;
  const inner = (schema: unknown) => (schema as { _zod: { def: { innerType?: unknown } } })._zod.def.innerType ?? schema;
  return Object.keys(shape).filter((key) => inner(shape[key]) === field.hash);
}

test('every hash that an entry carries names an attachment of the handover file, but for those of what another entry names', () => {
  const all = Object.entries(KINDS).flatMap(([kind, { body, version }]) =>
    hashFields(body).map((key) => ({ kind, key, version, body: { [key]: `hash of ${key}` } })),
  );
  const unnamed = all.filter((one) => !namedBy(one).includes(`hash of ${one.key}`)).map(({ kind, key }) => `${kind} ${key}`);
  expect(unnamed.sort()).toEqual([
    // the card that was worked by, and the plan it belongs to: named where they were issued
    'batch-tightened card',
    'bolt-tightened card',
    'card-issued plan',
    // an entry, not a file
    'correction corrects',
    'job-kept plan',
  ]);
  expect(all.length).toBeGreaterThan(unnamed.length + 8);
});

test('the first version of a swap names nothing: its chart lay nowhere', () => {
  const body = { chart: 'a' };
  expect(namedBy({ kind: 'tool-swapped', version: 1, body })).toEqual([]);
  expect(namedBy({ kind: 'tool-swapped', version: 2, body })).toEqual(['a']);
});
