import { describe, expect, test } from 'vitest';
import { canonicalBytes, type Json } from '../bytes/canonical.ts';
import { utf8 } from '../bytes/text.ts';
import { testWriter } from '../test-book.ts';
import { readEntry } from './envelope.ts';
import { KINDS } from './kinds/index.ts';

const sound = testWriter(1).write('note-written', { text: 'fog' });
const changed = (change: Record<string, unknown>) => {
  const one = Object.fromEntries(Object.entries({ ...sound.entry, ...change }).filter(([, value]) => value !== undefined));
  return readEntry(canonicalBytes(one as Json));
};
const fields = (outcome: ReturnType<typeof readEntry>) =>
  outcome.ok ? [] : outcome.notices.map(({ code, params }) => `${code} ${'field' in params ? params.field : ''}`);

describe('readEntry()', () => {
  test('reads what was written, under the same hash', () => {
    expect(readEntry(sound.bytes)).toEqual({ ok: true, value: sound });
  });
  test('keeps a kind it does not know', () => {
    expect(changed({ kind: 'bolt-sung-to', version: 7, body: { song: 'any' } }).ok).toBe(true);
  });
  test('refuses with all faults at once', () => {
    expect(fields(changed({ device: 'phone', at: 'yesterday', counter: -1 }))).toEqual([
      'entry-malformed device',
      'entry-malformed counter',
      'entry-malformed at',
    ]);
  });
  test.each([
    ['a place in the chain without the one before', { sequence: 3 }, 'previous'],
    ['a first entry that follows another', { previous: 'a'.repeat(64) }, 'previous'],
    ['a date the calendar has not', { at: '2026-02-30T00:00:00.000Z' }, 'at'],
    ['a month that is none', { at: '2026-13-01T00:00:00.000Z' }, 'at'],
    ['a field nobody described', { mood: 'good' }, 'entry'],
  ])('refuses %s', (_, change, field) => {
    expect(fields(changed(change))).toEqual([`entry-malformed ${field}`]);
  });
  test('refuses an entry without end', () => {
    expect(fields(readEntry(utf8(`"${'x'.repeat(70_000)}"`)))).toEqual(['entry-too-large ']);
  });
});

test('writeEntry() throws at a body that is not as its kind describes', () => {
  expect(() => testWriter(1).write('bolt-tightened', { bolt: 0 } as never)).toThrow(/joint/);
});
test('every kind is named after its file and has a version', () => {
  expect(Object.values(KINDS).every(({ version }) => version >= 1)).toBe(true);
  expect(Object.keys(KINDS).every((name) => /^[a-z][a-z-]*$/.test(name))).toBe(true);
});
