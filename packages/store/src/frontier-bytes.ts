import type { Frontier } from '@clampwright/record';

const HASH = 32;

export const frontierBytes = ({ roots }: Frontier): Buffer => Buffer.concat(roots);

export const readFrontier = (size: number, bytes: Uint8Array): Frontier => ({
  size,
  roots: Array.from({ length: bytes.length / HASH }, (_, i) => new Uint8Array(bytes.subarray(i * HASH, (i + 1) * HASH))),
});
