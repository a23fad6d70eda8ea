import { digest } from '../bytes/hash.ts';
import { joinBytes } from '../bytes/text.ts';

const LEAF = Uint8Array.of(0);
const NODE = Uint8Array.of(1);

/** MTH({d}) = SHA-256(0x00 ‖ d). Source: RFC 9162, 2.1.1. */
export const leafHash = (leaf: Uint8Array): Uint8Array => digest(joinBytes(LEAF, leaf));
/** SHA-256(0x01 ‖ left ‖ right). Source: RFC 9162, 2.1.1. */
export const nodeHash = (left: Uint8Array, right: Uint8Array): Uint8Array => digest(joinBytes(NODE, left, right));
/** MTH({}) = SHA-256(). Source: RFC 9162, 2.1.1. */
export const EMPTY_ROOT: Uint8Array = digest(new Uint8Array(0));

/** The largest power of two smaller than n, n > 1. */
export const splitOf = (n: number): number => 2 ** Math.floor(Math.log2(n - 1));

/**
 * The least that must be kept to go on growing a tree: roots of its whole subtrees, largest first; one for every binary 1 of the size.
 */
export interface Frontier {
  readonly size: number;
  readonly roots: readonly Uint8Array[];
}
export const EMPTY_FRONTIER: Frontier = { size: 0, roots: [] };

export function grow({ size, roots }: Frontier, leaf: Uint8Array): Frontier {
  const next = [...roots];
  let hash = leaf;
  for (let left = size; left % 2 === 1; left = (left - 1) / 2) hash = nodeHash(next.pop()!, hash);
  next.push(hash);
  return { size: size + 1, roots: next };
}

export function rootOf({ roots }: Frontier): Uint8Array {
  if (roots.length === 0) return EMPTY_ROOT;
  return roots.slice(0, -1).reduceRight((right, left) => nodeHash(left, right), roots.at(-1)!);
}
