/** Shares of the target from 0 to 2 in steps of a half per cent; what lies beyond falls into the last bin. */
const BINS_PER_TARGET = 200;
const BINS = 2 * BINS_PER_TARGET;

export const histogram = (): Uint32Array => new Uint32Array(BINS);

export function count(into: Uint32Array, share: number): void {
  into[Math.max(0, Math.min(BINS - 1, Math.floor(share * BINS_PER_TARGET)))]! += 1;
}

/** Share of the target below which `part` of the counted values lie: linear inside a bin. */
export function quantile(bins: Uint32Array, part: number): number {
  const all = bins.reduce((sum, one) => sum + one, 0);
  let below = 0;
  for (let bin = 0; bin < bins.length; bin += 1) {
    const here = bins[bin]!;
    if (here > 0 && below + here >= part * all) return (bin + Math.max(0, part * all - below) / here) / BINS_PER_TARGET;
    below += here;
  }
  return 0;
}
