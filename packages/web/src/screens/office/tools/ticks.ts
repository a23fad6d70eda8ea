/** Round figures between two ends, about so many. */
export function ticksOf(from: number, to: number, about: number): number[] {
  const raw = (to - from) / about || 1;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= raw) ?? raw;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}
