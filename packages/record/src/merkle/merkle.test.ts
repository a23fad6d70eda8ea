import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { digest } from '../bytes/hash.ts';
import { utf8 } from '../bytes/text.ts';
import { consistencyProof, inclusionProof, subtreeOf } from './prove.ts';
import { EMPTY_FRONTIER, EMPTY_ROOT, type Frontier, grow, leafHash, nodeHash, rootOf } from './tree.ts';
import { isConsistent, isIncluded } from './verify.ts';

// The eight leaves and roots that the reference implementations of RFC 6962 and RFC 9162 publish as their test vectors.
const LEAVES = ['', '00', '10', '2021', '3031', '40414243', '5051525354555657', '606162636465666768696a6b6c6d6e6f'].map(hexToBytes);
const ROOTS = [
  '6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d',
  'fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125',
  'aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77',
  'd37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7',
  '4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4',
  '76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef',
  'ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c',
  '5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328',
];

const grown = (leaves: readonly Uint8Array[]): Frontier =>
  leaves.reduce<Frontier>((tree, leaf) => grow(tree, leafHash(leaf)), EMPTY_FRONTIER);
const treeOf = (leaves: readonly Uint8Array[]) => subtreeOf((index) => leafHash(leaves[index]!));

describe('the tree of RFC 9162', () => {
  test('has the published root of no leaves', () => {
    expect(bytesToHex(EMPTY_ROOT)).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
    expect(rootOf(EMPTY_FRONTIER)).toEqual(EMPTY_ROOT);
  });
  test.each(ROOTS.map((root, i) => [i + 1, root]))('has the published root of %s leaves', (size, root) => {
    const leaves = LEAVES.slice(0, Number(size));
    expect(bytesToHex(rootOf(grown(leaves)))).toBe(root);
    expect(bytesToHex(treeOf(leaves)(0, leaves.length))).toBe(root);
  });
});

// RFC 9162, 2.1.5: the tree of seven leaves and the proofs printed for it.
describe('the example of RFC 9162, 2.1.5', () => {
  const leaves = Array.from({ length: 7 }, (_, i) => utf8(`d${i}`));
  const [a, b, c, d, e, f, j] = leaves.map(leafHash) as [
    Uint8Array,
    Uint8Array,
    Uint8Array,
    Uint8Array,
    Uint8Array,
    Uint8Array,
    Uint8Array,
  ];
  const [g, h, i] = [nodeHash(a, b), nodeHash(c, d), nodeHash(e, f)];
  const [k, l] = [nodeHash(g, h), nodeHash(i, j)];
  const hash = treeOf(leaves);
  test.each([
    [0, [b, h, l]],
    [3, [c, g, l]],
    [4, [f, j, k]],
    [6, [i, k]],
  ])('inclusionProof() of d%s is as printed', (index, proof) => {
    expect(inclusionProof(index, 7, hash)).toEqual(proof);
  });
  test.each([
    [3, [c, d, g, l]],
    [4, [l]],
    [6, [i, j, k]],
  ])('consistencyProof() from %s is as printed', (first, proof) => {
    expect(consistencyProof(first, 7, hash)).toEqual(proof);
  });
});

describe('proofs', () => {
  const leaves = Array.from({ length: 70 }, (_, i) => digest(utf8(`leaf ${i}`)));
  const hash = treeOf(leaves);
  const root = (size: number) => rootOf(grown(leaves.slice(0, size)));
  test('hold for every leaf of every size, and for no other leaf, place, size or root', () => {
    for (let size = 1; size <= 40; size += 1)
      for (let index = 0; index < size; index += 1) {
        const proof = inclusionProof(index, size, hash);
        const leaf = leafHash(leaves[index]!);
        expect(isIncluded(leaf, index, size, proof, root(size))).toBe(true);
        expect(isIncluded(leafHash(leaves[index + 1]!), index, size, proof, root(size))).toBe(false);
        expect(isIncluded(leaf, index + 1, size, proof, root(size))).toBe(false);
        expect(isIncluded(leaf, index, size, [...proof, leaf], root(size))).toBe(false);
        expect(isIncluded(leaf, index, size, proof, root(size + 1))).toBe(false);
      }
  });
  test('show every earlier size to be the beginning of every later one, and nothing else to be', () => {
    for (let second = 1; second <= 40; second += 1)
      for (let first = 1; first <= second; first += 1) {
        const proof = consistencyProof(first, second, hash);
        expect(isConsistent(first, root(first), second, root(second), proof)).toBe(true);
        expect(isConsistent(first, root(first + 1), second, root(second), proof)).toBe(false);
        expect(isConsistent(first, root(first), second, root(second + 1), proof)).toBe(false);
        expect(isConsistent(first, root(first), second, root(second), [...proof, root(1)])).toBe(false);
      }
  });
  test('fail when one bit of them is turned', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 70 }), fc.nat(), fc.nat(), fc.nat({ max: 255 }), (size, at, place, bit) => {
        const index = at % size;
        const proof = inclusionProof(index, size, hash).map((one) => one.slice());
        proof[place % proof.length]![bit >> 3]! ^= 1 << (bit & 7);
        expect(isIncluded(leafHash(leaves[index]!), index, size, proof, root(size))).toBe(false);
      }),
      { seed: 9162, numRuns: 500 },
    );
  });
});
