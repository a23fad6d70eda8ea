const [M0, M1] = [0xd2511f53, 0xcd9e8d57];
const [W0, W1] = [0x9e3779b9, 0xbb67ae85];

/** Upper half of the product of two unsigned 32-bit integers. */
function upper(a: number, b: number): number {
  const [al, ah, bl, bh] = [a & 0xffff, a >>> 16, b & 0xffff, b >>> 16];
  const middle = ah * bl + ((al * bl) >>> 16);
  return (ah * bh + (middle >>> 16) + (((middle & 0xffff) + al * bh) >>> 16)) >>> 0;
}

/**
 * Philox4x32-10: four random words that depend on nothing but a counter and a key, so that any draw of any run can be had at once, on
 * any core, in any order.
 *
 * `out` receives the words; `counter` four of them, `key` two.
 * Source: Salmon, Moraes, Dror, Shaw, “Parallel random numbers: as easy as 1, 2, 3”, SC11 (2011); known answers in its test.
 *
 * @example
 * const out = new Uint32Array(4);
 * philox(0, 0, 0, 0, 0, 0, out);
 * expect(out[0].toString(16)).toBe('6627e8d5');
 */
export function philox(c0: number, c1: number, c2: number, c3: number, k0: number, k1: number, out: Uint32Array): void {
  let [a, b, c, d] = [c0, c1, c2, c3];
  let [key0, key1] = [k0, k1];
  for (let round = 0; round < 10; round += 1) {
    const high0 = upper(M0, a);
    const high1 = upper(M1, c);
    const low0 = Math.imul(M0, a);
    const low1 = Math.imul(M1, c);
    a = (high1 ^ b ^ key0) >>> 0;
    b = low1 >>> 0;
    c = (high0 ^ d ^ key1) >>> 0;
    d = low0 >>> 0;
    key0 = (key0 + W0) >>> 0;
    key1 = (key1 + W1) >>> 0;
  }
  out[0] = a;
  out[1] = b;
  out[2] = c;
  out[3] = d;
}
