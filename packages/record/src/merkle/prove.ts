import { nodeHash, splitOf } from './tree.ts';

/** Hash of the leaves from `start` up to and without `end`: given by whoever holds the tree. */
export type SubtreeHash = (start: number, end: number) => Uint8Array;

/** MTH over leaf hashes, by the definition. Source: RFC 9162, 2.1.1. */
export const subtreeOf =
  (leaf: (index: number) => Uint8Array): SubtreeHash =>
  (start, end) => {
    const hash = subtreeOf(leaf);
    if (end - start === 1) return leaf(start);
    const split = start + splitOf(end - start);
    return nodeHash(hash(start, split), hash(split, end));
  };

/** PATH(index, D_size). Source: RFC 9162, 2.1.3.1. */
export function inclusionProof(index: number, size: number, hash: SubtreeHash): Uint8Array[] {
  if (!(index >= 0 && index < size)) throw new RangeError(`no leaf ${index} in a tree of ${size}`);
  const path = (at: number, start: number, end: number): Uint8Array[] => {
    if (end - start === 1) return [];
    const split = start + splitOf(end - start);
    return at < split ? [...path(at, start, split), hash(split, end)] : [...path(at, split, end), hash(start, split)];
  };
  return path(index, 0, size);
}

/** PROOF(first, D_second). Source: RFC 9162, 2.1.4.1. */
export function consistencyProof(first: number, second: number, hash: SubtreeHash): Uint8Array[] {
  if (!(first > 0 && first <= second)) throw new RangeError(`no proof from ${first} to ${second}`);
  const subproof = (from: number, start: number, end: number, whole: boolean): Uint8Array[] => {
    if (from === end) return whole ? [] : [hash(start, end)];
    const split = start + splitOf(end - start);
    return from <= split
      ? [...subproof(from, start, split, whole), hash(split, end)]
      : [...subproof(from, split, end, false), hash(start, split)];
  };
  return subproof(first, 0, second, true);
}
