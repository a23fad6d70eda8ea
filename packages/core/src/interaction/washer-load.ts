/** Where a bolt presses: a ring of pressure about the bolt, on the outer face of the plate. */
export interface WasherArea {
  /** radius of the bolt circle */
  readonly circle: number;
  readonly hole: number;
  readonly washer: number;
}

/**
 * Angular weight of the wave n at a radius: 2·[sin(n·a_o) − sin(n·a_i)]/n, and 2·(a_o − a_i) for n = 0, with cos a(r) = (r² + r_b² − ρ²)/(2·r·r_b)
 * for washer and hole.
 */
export function angularWeight({ circle, hole, washer }: WasherArea, n: number, radius: number): number {
  const half = (rho: number) => {
    const cosine = (radius ** 2 + circle ** 2 - rho ** 2) / (2 * radius * circle);
    return cosine >= 1 ? 0 : Math.acos(Math.max(-1, cosine));
  };
  const [outer, inner] = [half(washer), half(hole)];
  return n === 0 ? 2 * (outer - inner) : (2 * (Math.sin(n * outer) - Math.sin(n * inner))) / n;
}

/** Points for integrating over the radial width of the washer: denser at its edges, where the weight starts like a square root. */
export function radialPoints({ circle, washer, hole }: WasherArea, count: number): { readonly radius: number; readonly width: number }[] {
  const edges = [circle - washer, circle - hole, circle + hole, circle + washer];
  return edges.slice(1).flatMap((to, i) => {
    const from = edges[i]!;
    return Array.from({ length: count }, (_, k) => {
      const at = (share: number) => from + ((to - from) * (1 - Math.cos(Math.PI * share))) / 2;
      return { radius: at((k + 0.5) / count), width: at((k + 1) / count) - at(k / count) };
    });
  });
}
