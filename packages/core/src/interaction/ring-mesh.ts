/** One layer of a ring section, from the joint plane outwards. */
export interface Layer {
  readonly thickness: number;
  readonly inner: number;
  readonly outer: number;
  readonly modulus: number;
  readonly poisson: number;
  /** elements through the thickness; sizes grow by `growth` from one to the next */
  readonly rows: number;
  readonly growth?: number;
  /** is this layer pierced by the bolt holes? */
  readonly pierced: boolean;
}

export interface RingMesh {
  /** node coordinates */
  readonly r: Float64Array;
  readonly z: Float64Array;
  /** eight nodes of each element: corners anticlockwise from inner bottom, then mid-sides */
  readonly elements: readonly Int32Array[];
  readonly layerOf: readonly number[];
}

/**
 * Meshes the half section in rectangles: radial lines at every radius that matters, rows through each layer. Nodes are numbered
 * row by row along z, so that the matrix stays narrow where the wall is.
 */
export function meshRing(layers: readonly Layer[], radii: readonly number[], largest: number): RingMesh {
  const lines = radialLines(layers, radii, largest);
  const nodes = new Map<string, number>();
  const points: { r: number; z: number }[] = [];
  const nodeAt = (r: number, z: number): number => {
    const key = `${r.toFixed(6)}/${z.toFixed(6)}`;
    const known = nodes.get(key);
    if (known !== undefined) return known;
    nodes.set(key, points.length);
    points.push({ r, z });
    return points.length - 1;
  };
  const elements: Int32Array[] = [];
  const layerOf: number[] = [];
  let bottom = 0;
  for (const [index, layer] of layers.entries()) {
    for (const height of rowHeights(layer)) {
      const top = bottom + height;
      for (let i = 0; i + 1 < lines.length; i += 1) {
        const [r1, r2] = [lines[i]!, lines[i + 1]!];
        if (r1 < layer.inner - 1e-6 || r2 > layer.outer + 1e-6) continue;
        const [rm, zm] = [(r1 + r2) / 2, (bottom + top) / 2];
        elements.push(
          Int32Array.of(
            nodeAt(r1, bottom),
            nodeAt(r2, bottom),
            nodeAt(r2, top),
            nodeAt(r1, top),
            nodeAt(rm, bottom),
            nodeAt(r2, zm),
            nodeAt(rm, top),
            nodeAt(r1, zm),
          ),
        );
        layerOf.push(index);
      }
      bottom = top;
    }
  }
  return renumber(points, elements, layerOf);
}

function renumber(points: readonly { r: number; z: number }[], elements: readonly Int32Array[], layerOf: readonly number[]): RingMesh {
  const order = points.map((_, i) => i).sort((a, b) => points[a]!.z - points[b]!.z || points[a]!.r - points[b]!.r);
  const place = new Int32Array(points.length);
  for (const [at, old] of order.entries()) place[old] = at;
  return {
    r: Float64Array.from(order, (old) => points[old]!.r),
    z: Float64Array.from(order, (old) => points[old]!.z),
    elements: elements.map((element) => element.map((node) => place[node]!)),
    layerOf,
  };
}

/** Every radius at which something begins or ends, filled up so that no element is wider than `largest`. */
function radialLines(layers: readonly Layer[], radii: readonly number[], largest: number): number[] {
  const inner = Math.min(...layers.map((layer) => layer.inner));
  const outer = Math.max(...layers.map((layer) => layer.outer));
  const sorted = [...layers.flatMap((layer) => [layer.inner, layer.outer]), ...radii]
    .filter((radius) => radius >= inner && radius <= outer)
    .sort((a, b) => a - b)
    .filter((radius, i, all) => i === 0 || radius - all[i - 1]! > 1e-3);
  const lines: number[] = [];
  for (let i = 0; i + 1 < sorted.length; i += 1) {
    const parts = Math.max(1, Math.ceil((sorted[i + 1]! - sorted[i]!) / largest));
    for (let k = 0; k < parts; k += 1) lines.push(sorted[i]! + ((sorted[i + 1]! - sorted[i]!) * k) / parts);
  }
  lines.push(sorted.at(-1)!);
  return lines;
}

function rowHeights({ thickness, rows, growth = 1 }: Layer): number[] {
  const weights = Array.from({ length: rows }, (_, i) => growth ** i);
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => (thickness * weight) / sum);
}
