import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalBytes, canonicalText, type Json, readCanonical } from './canonical.ts';
import { hashOf } from './hash.ts';
import { utf8 } from './text.ts';

// RFC 8785, 3.2.3: the property names of the sorting example, in the order it prints.
test('canonicalText() sorts keys as RFC 8785, 3.2.3 prints', () => {
  const sorted = ['\r', '1', '\u0080', 'ö', '€', '😀', '\ufb33'];
  const value = Object.fromEntries(['€', '\r', '\ufb33', '1', '😀', '\u0080', 'ö'].map((key) => [key, 'x']));
  expect(canonicalText(value)).toBe(`{${sorted.map((key) => `${JSON.stringify(key)}:"x"`).join(',')}}`);
});
// RFC 8785, 3.2.4: the string of the example and its bytes.
test('canonicalText() escapes as RFC 8785, 3.2.2.2 prints', () => {
  expect(canonicalText('€$\u000F\nA\'B"\\\\"/')).toBe('"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"');
});
// FIPS 180-4 example
test('hashOf() gives the digest of "abc" that FIPS 180-4 prints', () => {
  expect(hashOf(utf8('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

const json: fc.Arbitrary<Json> = fc.letrec<{ value: Json }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small', maxDepth: 5 },
    fc.string({ unit: 'grapheme' }),
    fc.boolean(),
    fc.maxSafeInteger(),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(fc.string({ unit: 'grapheme' }), tie('value'), { maxKeys: 4 }),
  ),
})).value;

test('readCanonical() takes back what canonicalBytes() writes, and only in that spelling', () => {
  fc.assert(
    fc.property(json, (value) => {
      const bytes = canonicalBytes(value);
      const read = readCanonical(bytes);
      expect(read.ok && canonicalText(read.value)).toBe(canonicalText(value));
      expect(readCanonical(utf8(` ${canonicalText(value)}`)).ok).toBe(false);
    }),
    { seed: 5, numRuns: 300 },
  );
});

test.each([
  ['two spellings of a number', '{"a":1e3}'],
  ['minus zero', '{"a":-0}'],
  ['a fraction', '{"a":0.5}'],
  ['beyond the safe integers', '{"a":9007199254740993}'],
  ['null', '{"a":null}'],
  ['a key twice', '{"a":1,"a":2}'],
  ['keys out of order', '{"b":1,"a":2}'],
  ['an escaped letter', '{"a":"\\u0041"}'],
  ['half of a character', '{"a":"\\ud800"}'],
  ['a byte-order mark', '\uFEFF{}'],
  ['a newline at the end', '{}\n'],
  ['depth without end', `${'['.repeat(20_000)}${']'.repeat(20_000)}`],
  ['no JSON', '{'],
])('readCanonical() refuses %s', (_, text) => {
  const read = readCanonical(utf8(text));
  expect(read.ok ? 'taken' : read.notices[0]!.code).toBe('not-canonical');
});
test('readCanonical() refuses bytes that are not UTF-8', () => {
  expect(readCanonical(Uint8Array.of(0x22, 0xff, 0x22)).ok).toBe(false);
  expect(readCanonical(Uint8Array.of(0x22, 0xc0, 0xaf, 0x22)).ok).toBe(false);
});
