/**
 * Values at every whole wave number from few computed ones: natural cubic spline in ln n between them.
 *
 * The response of a ring is smooth in n; about twenty computed waves carry hundreds.
 */
export function splineOverWaves(waves: readonly number[], values: readonly number[]): (n: number) => number {
  const x = waves.map(Math.log);
  const count = x.length;
  const second = new Float64Array(count);
  const work = new Float64Array(count);
  for (let i = 1; i + 1 < count; i += 1) {
    const sigma = (x[i]! - x[i - 1]!) / (x[i + 1]! - x[i - 1]!);
    const p = sigma * second[i - 1]! + 2;
    second[i] = (sigma - 1) / p;
    const bend = (values[i + 1]! - values[i]!) / (x[i + 1]! - x[i]!) - (values[i]! - values[i - 1]!) / (x[i]! - x[i - 1]!);
    work[i] = ((6 * bend) / (x[i + 1]! - x[i - 1]!) - sigma * work[i - 1]!) / p;
  }
  for (let i = count - 2; i >= 0; i -= 1) second[i] = second[i]! * second[i + 1]! + work[i]!;
  return (n) => {
    const at = Math.log(n);
    let low = 0;
    while (low + 2 < count && x[low + 1]! <= at) low += 1;
    const width = x[low + 1]! - x[low]!;
    const [a, b] = [(x[low + 1]! - at) / width, (at - x[low]!) / width];
    return a * values[low]! + b * values[low + 1]! + (((a ** 3 - a) * second[low]! + (b ** 3 - b) * second[low + 1]!) * width ** 2) / 6;
  };
}

/** Wave numbers to compute, whole, each about a fixed factor above the one before; the first ones all. */
export function wavesToCompute(last: number, count: number): number[] {
  const waves = new Set([1, 2, 3, 4, 5, 6].filter((n) => n <= last));
  for (let i = 0; i <= count; i += 1) waves.add(Math.min(last, Math.max(2, Math.round(6 * (last / 6) ** (i / count)))));
  return [...waves].sort((a, b) => a - b);
}
