/** A point or direction in space. */
export type Vector = readonly [x: number, y: number, z: number];

/** A place in space: origin, and the directions of its own axes, at right angles and of length 1. The first three columns and the last of a 4 × 4 matrix. */
export interface Placement {
  readonly origin: Vector;
  readonly x: Vector;
  readonly y: Vector;
  readonly z: Vector;
}

export const WORLD: Placement = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };

export const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vector, factor: number): Vector => [a[0] * factor, a[1] * factor, a[2] * factor];
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vector, b: Vector): Vector => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

/** The same direction with length 1; `undefined` for none. */
export function unit(a: Vector): Vector | undefined {
  const length = Math.hypot(...a);
  return length > 0 && Number.isFinite(length) ? times(a, 1 / length) : undefined;
}

/**
 * Axes from two directions: z as given, x the part of the given direction at right angles to it, y to the right-handed rest.
 * Directions that are missing or no axes are those of the world. Source: ISO 16739-1, IfcBuildAxes and IfcFirstProjAxis.
 *
 * @example
 * expect(axesFrom([0, 0, 0], [1, 0, 0], [0, 0, 2]).x).toEqual([0, 0, 1]);
 */
export function axesFrom(origin: Vector, axis?: Vector, reference?: Vector): Placement {
  const z = (axis && unit(axis)) ?? WORLD.z;
  const along = square(reference && unit(reference), z) ?? square(WORLD.x, z) ?? square(WORLD.y, z)!;
  return { origin, x: along, y: cross(z, along), z };
}

/** A direction of the inner place, seen from outside. */
export const turned = ({ x, y, z }: Placement, way: Vector): Vector => add(add(times(x, way[0]), times(y, way[1])), times(z, way[2]));

/** The part of a direction at right angles to z; `undefined` where they are as good as one. */
function square(way: Vector | undefined, z: Vector): Vector | undefined {
  const rest = way && minus(way, times(z, dot(way, z)));
  return rest && Math.hypot(...rest) > 1e-6 ? unit(rest) : undefined;
}

/** A point of the inner place, seen from outside. */
export const placed = (outer: Placement, point: Vector): Vector => add(outer.origin, turned(outer, point));

/**
 * A place inside another, seen from outside of both.
 *
 * @example
 * const quarter = axesFrom([100, 0, 0], [0, 0, 1], [0, 1, 0]);
 * expect(within(quarter, axesFrom([10, 0, 0])).origin).toEqual([100, 10, 0]);
 */
export const within = (outer: Placement, inner: Placement): Placement => ({
  origin: placed(outer, inner.origin),
  x: turned(outer, inner.x),
  y: turned(outer, inner.y),
  z: turned(outer, inner.z),
});
