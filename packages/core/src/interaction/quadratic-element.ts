/** Shape functions of the eight-node serendipity quadrilateral at a point, with their derivatives; corners first, then mid-sides. */
export interface Shape {
  readonly value: Float64Array;
  readonly byXi: Float64Array;
  readonly byEta: Float64Array;
}

const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;
/** mid-side nodes: bottom, right, top, left */
const MIDDLES = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
] as const;

export function shapeAt(xi: number, eta: number): Shape {
  const value = new Float64Array(8);
  const byXi = new Float64Array(8);
  const byEta = new Float64Array(8);
  for (const [i, [a, b]] of CORNERS.entries()) {
    value[i] = ((1 + a * xi) * (1 + b * eta) * (a * xi + b * eta - 1)) / 4;
    byXi[i] = (a * (1 + b * eta) * (2 * a * xi + b * eta)) / 4;
    byEta[i] = (b * (1 + a * xi) * (a * xi + 2 * b * eta)) / 4;
  }
  for (const [i, [a, b]] of MIDDLES.entries()) {
    if (a === 0) {
      value[4 + i] = ((1 - xi * xi) * (1 + b * eta)) / 2;
      byXi[4 + i] = -xi * (1 + b * eta);
      byEta[4 + i] = (b * (1 - xi * xi)) / 2;
    } else {
      value[4 + i] = ((1 + a * xi) * (1 - eta * eta)) / 2;
      byXi[4 + i] = (a * (1 - eta * eta)) / 2;
      byEta[4 + i] = -eta * (1 + a * xi);
    }
  }
  return { value, byXi, byEta };
}

const G = 1 / Math.sqrt(3);
/** The 2 × 2 Gauss points; each has weight one. */
export const GAUSS: readonly Shape[] = [shapeAt(-G, -G), shapeAt(G, -G), shapeAt(G, G), shapeAt(-G, G)];
