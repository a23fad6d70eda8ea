/** How a chart is typed: what its first line says. */
const SHAPES = {
  'gear-step': (steps: number) => [`gear [N·m]`, ...Array.from({ length: steps }, (_, at) => String(at + 1))],
  'pump-pressure': () => ['pump pressure [bar]', 'torque [N·m]'],
  'air-pressure': () => ['air pressure [bar]', 'torque [N·m]'],
  scale: () => ['scale', 'torque [N·m]'],
} as const;
export type ChartShape = keyof typeof SHAPES;
export const CHART_SHAPES = Object.keys(SHAPES) as readonly ChartShape[];

/** An empty chart to be typed: its headings, and its rows. */
export function emptyChart(
  shape: ChartShape,
  gears: number,
  steps: number,
): { readonly head: readonly string[]; readonly rows: string[][] } {
  const head = SHAPES[shape](Math.max(1, Math.min(60, steps || 1)));
  if (shape !== 'gear-step') return { head, rows: Array.from({ length: 8 }, () => head.map(() => '')) };
  const rows = Array.from({ length: Math.max(1, Math.min(30, gears || 1)) }, (_, gear) => [
    String(gear + 1),
    ...head.slice(1).map(() => ''),
  ]);
  return { head, rows };
}
