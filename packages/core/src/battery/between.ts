/**
 * Value of a table at a point: straight between its rows, which rise in their first column; the end rows hold beyond them.
 */
export function between(rows: readonly (readonly [at: number, value: number])[], point: number): number {
  const after = rows.findIndex(([at]) => at >= point);
  if (after < 0) return rows.at(-1)![1];
  if (after === 0) return rows[0]![1];
  const [[x0, y0], [x1, y1]] = [rows[after - 1]!, rows[after]!];
  return y0 + ((y1 - y0) * (point - x0)) / (x1 - x0);
}
