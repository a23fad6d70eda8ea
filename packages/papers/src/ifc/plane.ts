import { add, cross, dot, minus, times, unit, type Vector, WORLD } from './placement.ts';

/** A plane through points: a point of it, two directions in it at right angles, and the one it faces. */
export interface Plane {
  readonly centre: Vector;
  readonly u: Vector;
  readonly v: Vector;
  readonly normal: Vector;
  /** greatest distance of a point from it */
  readonly off: number;
}

const centreOf = (points: readonly Vector[]): Vector => times(points.reduce(add, [0, 0, 0]), 1 / points.length);

/**
 * The plane of bolts: at right angles to the axes where bolts say they all point one way, else the plane that fits their places best
 * (least squares: the direction in which they scatter least). u is level where that can be.
 */
export function planeOf(points: readonly Vector[], axes: readonly Vector[]): Plane {
  const centre = centreOf(points);
  const fitted = points.length > 2 ? leastScatter(points.map((point) => minus(point, centre))) : undefined;
  const towards = meanAxis(axes);
  const normal = towards ?? fitted ?? WORLD.z;
  const u = unit(cross(WORLD.z, normal)) ?? WORLD.x;
  const v = cross(normal, u);
  return { centre, u, v, normal, off: Math.max(...points.map((point) => Math.abs(dot(minus(point, centre), normal)))) };
}

/** cos 2° */
const ALIKE = 0.9994;

/** The one direction of all axes, whichever end of it a bolt's head is; `undefined` where they differ. */
function meanAxis(axes: readonly Vector[]): Vector | undefined {
  const first = axes[0] && unit(axes[0]);
  if (!first || !axes.every((axis) => Math.abs(dot(axis, first)) > ALIKE)) return undefined;
  return unit(axes.map((axis) => times(axis, Math.sign(dot(axis, first)))).reduce(add));
}

/** Eigenvector of the smallest eigenvalue of the scatter, by Jacobi rotations; `undefined` where points lie on a line. */
function leastScatter(points: readonly Vector[]): Vector | undefined {
  const a = [0, 1, 2].map((i) => [0, 1, 2].map((j) => points.reduce((sum, point) => sum + point[i]! * point[j]!, 0)));
  const e = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (let sweep = 0; sweep < 30; sweep += 1) {
    for (const [p, q] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const) {
      if (Math.abs(a[p]![q]!) < 1e-300) continue;
      const theta = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!);
      const t = Math.sign(theta || 1) / (Math.abs(theta) + Math.hypot(theta, 1));
      const [c, s] = [1 / Math.hypot(t, 1), t / Math.hypot(t, 1)];
      for (let k = 0; k < 3; k += 1) [a[k]![p], a[k]![q]] = [c * a[k]![p]! - s * a[k]![q]!, s * a[k]![p]! + c * a[k]![q]!];
      for (let k = 0; k < 3; k += 1) [a[p]![k], a[q]![k]] = [c * a[p]![k]! - s * a[q]![k]!, s * a[p]![k]! + c * a[q]![k]!];
      for (let k = 0; k < 3; k += 1) [e[k]![p], e[k]![q]] = [c * e[k]![p]! - s * e[k]![q]!, s * e[k]![p]! + c * e[k]![q]!];
    }
  }
  const order = [0, 1, 2].sort((i, j) => a[i]![i]! - a[j]![j]!);
  // a second direction without scatter: any plane through the line fits
  if (a[order[1]!]![order[1]!]! < 1e-6 * a[order[2]!]![order[2]!]!) return undefined;
  const least = order[0]!;
  return unit([e[0]![least]!, e[1]![least]!, e[2]![least]!]);
}
