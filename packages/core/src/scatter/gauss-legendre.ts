/** Abscissas on [−1, 1] and weights of the n-point Gauss–Legendre rule, by Newton's method on P_n. Source: Abramowitz & Stegun 25.4.29, 22.16.6. */
export function gaussLegendre(n: number): readonly (readonly [x: number, weight: number])[] {
  return Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step += 1) {
      let [before, value] = [1, x];
      for (let k = 2; k <= n; k += 1) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
      slope = (n * (x * value - before)) / (x * x - 1);
      const change = value / slope;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    return [x, 2 / ((1 - x * x) * slope * slope)] as const;
  });
}
