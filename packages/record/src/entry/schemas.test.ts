import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { readUtf8 } from '../bytes/text.ts';
import { jointId, openingEntries, testSlice, testWriter } from '../test-book.ts';
import { entrySchema } from './schemas.ts';

test('docs/schemas/entry.schema.json says what is written now (vitest -u writes it anew)', async () => {
  await expect(`${JSON.stringify(entrySchema(), null, 1)}\n`).toMatchFileSnapshot('../../../../docs/schemas/entry.schema.json');
});

// an independent reader of JSON Schema
const fits = new Ajv2020({ strict: false }).compile(entrySchema() as object);
const [planner, phone] = [testWriter(1), testWriter(2)];
const told = (bytes: Uint8Array) => JSON.parse(readUtf8(bytes)!) as Record<string, unknown> & { body: Record<string, unknown> };
const tightened = told(
  phone.write('bolt-tightened', { joint: jointId(1), bolt: 3, step: 'first step', end: 'stall', angleMilliDegree: 90_000 }).bytes,
);

test('entries of a real book are valid by it', () => {
  const entries = [...openingEntries(planner, [phone], [testSlice(1, 8)]).map(({ bytes }) => told(bytes)), tightened];
  expect(entries.length).toBeGreaterThan(3);
  for (const one of entries) expect([one.kind, fits(one), fits.errors]).toEqual([one.kind, true, null]);
});

test('a kind of later versions is let through; a damaged entry is not', () => {
  expect(fits({ ...tightened, kind: 'bolt-sung-to', version: 7, body: { song: 'any' } })).toBe(true);
  expect(fits({ ...tightened, body: { ...tightened.body, bolt: 0 } })).toBe(false);
  expect(fits({ ...tightened, body: { ...tightened.body, end: 'maybe' } })).toBe(false);
  expect(fits({ ...tightened, mood: 'good' })).toBe(false);
  expect(fits({ ...tightened, counter: -1 })).toBe(false);
});
