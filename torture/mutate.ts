import type { Random } from './random.ts';

const cut = (bytes: Uint8Array, from: number, to: number) => Uint8Array.from([...bytes.subarray(0, from), ...bytes.subarray(to)]);
const put = (bytes: Uint8Array, at: number, more: ArrayLike<number>) =>
  Uint8Array.from([...bytes.subarray(0, at), ...Array.from(more), ...bytes.subarray(at)]);

/** One to eight changes of bytes: bits, drops, repeats, and words that mean something to the reader. */
export function mutated(bytes: Uint8Array, words: readonly string[], random: Random): Uint8Array {
  let changed = bytes;
  for (let left = 1 + random.below(8); left > 0; left -= 1) changed = once(changed, words, random);
  return changed;
}

function once(bytes: Uint8Array, words: readonly string[], random: Random): Uint8Array {
  if (bytes.length === 0) return Uint8Array.of(random.below(256));
  const at = random.below(bytes.length);
  const far = Math.min(bytes.length, at + 1 + random.below(200));
  switch (random.below(8)) {
    case 0: {
      const turned = bytes.slice();
      turned[at]! ^= 1 << random.below(8);
      return turned;
    }
    case 1:
      return cut(bytes, at, far);
    case 2:
      return put(bytes, at, bytes.subarray(at, far));
    case 3:
      return bytes.slice(0, at);
    case 4: {
      const other = random.below(bytes.length);
      return put(bytes, other, bytes.subarray(at, far));
    }
    case 5:
      return put(
        bytes,
        at,
        Array.from({ length: 1 + random.below(2000) }, () => bytes[at]!),
      );
    default:
      return put(bytes, at, new TextEncoder().encode(random.one(words)));
  }
}
