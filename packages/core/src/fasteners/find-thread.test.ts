import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findThread } from './find-thread.ts';
import { METRIC_THREADS } from './metric-threads.ts';
import type { Thread } from './thread.ts';

/** Ways people write one thread. */
const spellings = ({ diameter, pitch }: Thread): fc.Arbitrary<string> =>
  fc
    .record({
      letter: fc.constantFrom('M', 'm', 'M '),
      by: fc.constantFrom('x', '×', ' x ', '-', 'X'),
      decimals: fc.constantFrom(
        String,
        (value: number) => value.toFixed(2),
        (value: number) => String(value).replace('.', ','),
      ),
      tolerance: fc.constantFrom('', '-6g', ' - 6e'),
    })
    .map(({ letter, by, decimals, tolerance }) => `${letter}${decimals(diameter)}${by}${decimals(pitch)}${tolerance}`);

describe('findThread()', () => {
  test('finds every metric thread of the list under its own designation', () => {
    for (const thread of METRIC_THREADS) expect(findThread(thread.designation)).toEqual({ ok: true, value: thread });
  });
  test('finds it however diameter and pitch are written', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...METRIC_THREADS).chain((thread) => spellings(thread).map((text) => ({ thread, text }))),
        ({ thread, text }) => {
          const found = findThread(text);
          expect(found.ok, text).toBe(true);
          if (found.ok) expect(found.value).toBe(thread);
        },
      ),
    );
  });
  test.each(['M23', 'M24x5', 'M', '24', 'M24x', 'bolt', ''])('refuses %j as unknown', (text) => {
    const found = findThread(text);
    expect(found.ok || found.notices.map(({ code }) => code)).toEqual(['thread-unknown']);
  });
  test('says that M72 has no coarse pitch, and how to write it', () => {
    const found = findThread('M72');
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.notices[0]?.params).toMatchObject({ example: 'M72x6' });
    expect(findThread('M72x6').ok).toBe(true);
  });
  test.each(['3/4-10 UNC', '1 1/8-8UN'])('hands inch text on: %s', (text) => {
    const found = findThread(text);
    expect(found.ok && found.value.designation).toBe(text);
  });
});
