import { sameBytes } from '../bytes/text.ts';
import { nodeHash } from './tree.ts';

/** Does the leaf stand at `index` in the tree with this root? Source: the algorithm of RFC 9162, 2.1.3.2. */
export function isIncluded(leaf: Uint8Array, index: number, size: number, path: readonly Uint8Array[], root: Uint8Array): boolean {
  if (!(index >= 0 && index < size)) return false;
  let [fn, sn, hash] = [index, size - 1, leaf];
  for (const sibling of path) {
    if (sn === 0) return false;
    if (fn % 2 === 1 || fn === sn) {
      hash = nodeHash(sibling, hash);
      while (fn % 2 === 0 && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else hash = nodeHash(hash, sibling);
    [fn, sn] = [half(fn), half(sn)];
  }
  return sn === 0 && sameBytes(hash, root);
}

/** Does the second tree continue the first? Source: the algorithm of RFC 9162, 2.1.4.2. */
export function isConsistent(
  first: number,
  firstRoot: Uint8Array,
  second: number,
  secondRoot: Uint8Array,
  proof: readonly Uint8Array[],
): boolean {
  if (!(first > 0 && first <= second)) return false;
  if (first === second) return proof.length === 0 && sameBytes(firstRoot, secondRoot);
  if (proof.length === 0) return false;
  const path = isPowerOfTwo(first) ? [firstRoot, ...proof] : [...proof];
  let [fn, sn] = [first - 1, second - 1];
  while (fn % 2 === 1) [fn, sn] = [half(fn), half(sn)];
  let [fr, sr] = [path[0]!, path[0]!];
  for (const sibling of path.slice(1)) {
    if (sn === 0) return false;
    if (fn % 2 === 1 || fn === sn) {
      fr = nodeHash(sibling, fr);
      sr = nodeHash(sibling, sr);
      while (fn % 2 === 0 && fn !== 0) [fn, sn] = [half(fn), half(sn)];
    } else sr = nodeHash(sr, sibling);
    [fn, sn] = [half(fn), half(sn)];
  }
  return sn === 0 && sameBytes(fr, firstRoot) && sameBytes(sr, secondRoot);
}

// Trees may pass 2³¹ leaves, so no bit operators.
const half = (n: number) => Math.floor(n / 2);
const isPowerOfTwo = (n: number) => Number.isInteger(Math.log2(n)) && 2 ** Math.log2(n) === n;
