/** Tags sort as people read them: letters by code, runs of digits as numbers; no language is involved. */
export function compareTags(a: string, b: string): number {
  const [as, bs] = [a.split(/(\d+)/), b.split(/(\d+)/)];
  for (let i = 0; i < Math.min(as.length, bs.length); i += 1) {
    const [x, y] = [as[i]!, bs[i]!];
    if (x === y) continue;
    const byNumber = i % 2 === 1 ? Number(x) - Number(y) : 0;
    return byNumber === 0 ? (x < y ? -1 : 1) : byNumber;
  }
  return as.length - bs.length;
}
