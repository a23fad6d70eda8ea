/** A point in a joint's plane, mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Bolts as a joint list names their layout; `order`: which of the given spots is bolt 1, 2 … */
export type FoundLayout =
  | {
      readonly kind: 'grid';
      readonly rows: number;
      readonly columns: number;
      readonly along?: number;
      readonly across?: number;
      readonly order: readonly number[];
    }
  | { readonly kind: 'ring'; readonly circle: number; readonly order: readonly number[] }
  | { readonly kind: 'spots'; readonly spots: readonly Spot[]; readonly order: readonly number[] };

/** Places in a model are exact to about this, mm. */
const FITS = 1;
const LEAST_RING = 5;

/**
 * The layout of spots: rows and columns at equal spacing, whichever way they are turned; else a ring at equal angles, numbered clockwise
 * from the top; else the spots themselves, by rows from the top left.
 */
export function layoutOf(spots: readonly Spot[]): FoundLayout {
  return grid(spots, 0) ?? grid(spots, nearestWay(spots)) ?? ring(spots) ?? free(spots);
}

function turnedBy(spots: readonly Spot[], angle: number): Spot[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return spots.map(({ x, y }) => ({ x: c * x + s * y, y: c * y - s * x }));
}

/** Direction from the first spot to the one next to it, within a right angle. */
function nearestWay(spots: readonly Spot[]): number {
  const [first, ...others] = spots;
  const next = others.reduce<{ readonly d: number; readonly angle: number } | undefined>((best, { x, y }) => {
    const [dx, dy] = [x - first!.x, y - first!.y];
    const d = Math.hypot(dx, dy);
    return best && best.d <= d ? best : { d, angle: Math.atan2(dy, dx) };
  }, undefined);
  const quarter = Math.PI / 2;
  return next ? next.angle - Math.round(next.angle / quarter) * quarter : 0;
}

function grid(given: readonly Spot[], angle: number): FoundLayout | undefined {
  const spots = turnedBy(given, angle);
  const xs = levels(spots.map(({ x }) => x));
  const ys = levels(spots.map(({ y }) => y)).toReversed();
  if (xs.length * ys.length !== spots.length) return undefined;
  const [along, across] = [spacingOf(xs), spacingOf(ys)];
  if (along === undefined || across === undefined) return undefined;
  const order = ys.flatMap((y) => xs.map((x) => spots.findIndex((spot) => Math.abs(spot.x - x) <= FITS && Math.abs(spot.y - y) <= FITS)));
  if (order.includes(-1) || new Set(order).size !== order.length) return undefined;
  return {
    kind: 'grid',
    rows: ys.length,
    columns: xs.length,
    order,
    ...(xs.length > 1 ? { along } : {}),
    ...(ys.length > 1 ? { across } : {}),
  };
}

/** Values that differ, from small to large. */
function levels(values: readonly number[]): number[] {
  const found: number[] = [];
  for (const value of [...values].sort((a, b) => a - b)) if (found.length === 0 || value - found.at(-1)! > FITS) found.push(value);
  return found;
}

/** The one distance between neighbours; 0 for a single level, `undefined` where they differ. */
function spacingOf(values: readonly number[]): number | undefined {
  const steps = values.slice(1).map((value, at) => Math.abs(value - values[at]!));
  if (steps.length === 0) return 0;
  const mean = steps.reduce((sum, step) => sum + step, 0) / steps.length;
  return steps.every((step) => Math.abs(step - mean) <= FITS) ? mean : undefined;
}

function ring(spots: readonly Spot[]): FoundLayout | undefined {
  if (spots.length < LEAST_RING) return undefined;
  const centre = { x: spots.reduce((sum, { x }) => sum + x, 0) / spots.length, y: spots.reduce((sum, { y }) => sum + y, 0) / spots.length };
  const polar = spots.map(({ x, y }, at) => ({
    at,
    radius: Math.hypot(x - centre.x, y - centre.y),
    // clockwise from the top
    angle: (Math.atan2(x - centre.x, y - centre.y) + 2 * Math.PI) % (2 * Math.PI),
  }));
  const radius = polar.reduce((sum, one) => sum + one.radius, 0) / spots.length;
  const inOrder = polar.toSorted((a, b) => a.angle - b.angle);
  const step = (2 * Math.PI) / spots.length;
  const even = inOrder.every((one, i) => {
    const turn = i === 0 ? one.angle + 2 * Math.PI - inOrder.at(-1)!.angle : one.angle - inOrder[i - 1]!.angle;
    return Math.abs(turn - step) * radius <= FITS && Math.abs(one.radius - radius) <= FITS;
  });
  if (!even) return undefined;
  // a bolt that is at the top but for rounding is bolt 1
  const last = inOrder.at(-1)!;
  const order = (2 * Math.PI - last.angle) * radius < FITS ? [last, ...inOrder.slice(0, -1)] : inOrder;
  return { kind: 'ring', circle: 2 * radius, order: order.map(({ at }) => at) };
}

function free(spots: readonly Spot[]): FoundLayout {
  const order = spots
    .map((_, at) => at)
    .sort((a, b) => (Math.abs(spots[a]!.y - spots[b]!.y) > FITS ? spots[b]!.y - spots[a]!.y : spots[a]!.x - spots[b]!.x));
  return { kind: 'spots', spots: order.map((at) => spots[at]!), order };
}
