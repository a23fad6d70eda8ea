import { IFCRELAGGREGATES, IFCRELCONNECTSWITHREALIZINGELEMENTS, IFCRELNESTS } from './entities.ts';
import type { Bolt } from './fasteners.ts';
import { type Model, references } from './model.ts';
import { dot, minus, type Vector } from './placement.ts';

/** What holds the bolts of a joint together in the model. */
export type Held = 'nest' | 'connection' | 'assembly' | 'distance';

export interface BoltGroup {
  readonly held: Held;
  /** line of the element in which they nest or of which they are part */
  readonly whole?: number;
  /** elements that they connect */
  readonly connects: readonly number[];
  readonly bolts: readonly Bolt[];
}

/**
 * Bolts by joint: those nested in one element are one joint; those that connect the same elements, or are part of one assembly, are
 * parted once more where they are far from each other, in another plane or point another way; the rest go by distance alone.
 */
export function groupBolts(model: Model, bolts: readonly Bolt[]): readonly BoltGroup[] {
  const nests = parents(model, IFCRELNESTS);
  const assemblies = parents(model, IFCRELAGGREGATES);
  const connects = connections(model);
  const byKey = new Map<string, { held: Held; whole?: number; bolts: Bolt[] }>();
  for (const bolt of bolts) {
    const [nest, assembly] = [nests.get(bolt.id), assemblies.get(bolt.id)];
    const between = connects.get(bolt.id);
    const [held, key, whole]: [Held, string, number | undefined] =
      nest !== undefined
        ? ['nest', `nest ${nest}`, nest]
        : between
          ? ['connection', `between ${[...between].sort((a, b) => a - b).join(' ')}`, undefined]
          : assembly !== undefined
            ? ['assembly', `assembly ${assembly}`, assembly]
            : ['distance', 'rest', undefined];
    const known = byKey.get(key);
    if (known) known.bolts.push(bolt);
    else byKey.set(key, { held, bolts: [bolt], ...(whole === undefined ? {} : { whole }) });
  }
  return [...byKey.values()].flatMap(({ held, whole, bolts: all }) =>
    (held === 'nest' ? [all] : apart(all)).map((some) => ({
      held,
      bolts: some,
      connects: [...new Set(some.flatMap(({ id }) => [...(connects.get(id) ?? [])]))].sort((a, b) => a - b),
      ...(whole === undefined ? {} : { whole }),
    })),
  );
}

function parents(model: Model, kind: number): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  for (const id of model.ids(kind)) {
    const line = model.line(id);
    const [whole] = references([line?.RelatingObject]);
    if (whole !== undefined) for (const part of references(line?.RelatedObjects)) found.set(part, whole);
  }
  return found;
}

/** All elements that a bolt connects, over every relation that it realises. */
function connections(model: Model): ReadonlyMap<number, ReadonlySet<number>> {
  const found = new Map<number, Set<number>>();
  for (const id of model.ids(IFCRELCONNECTSWITHREALIZINGELEMENTS)) {
    const line = model.line(id);
    const ends = references([line?.RelatingElement, line?.RelatedElement]);
    for (const bolt of references(line?.RealizingElements)) {
      const known = found.get(bolt) ?? new Set();
      for (const end of ends) known.add(end);
      found.set(bolt, known);
    }
  }
  return found;
}

/** Bolts of one joint are no further from the next one than this many diameters. Own choice: the largest spacing of EN 1993-1-8 Table 3.3 is 14 t. */
const REACH = 15;
/** … and their heads lie in one plane within so many diameters. */
const OFF_PLANE = 1.5;
/** cos 3° */
const SAME_WAY = 0.9986;
/** Where no size is known. */
const USUAL_DIAMETER = 24;

const diameterOf = ({ size }: Bolt): number => {
  const metric = /^M([\d.]+)/.exec(size ?? '');
  return metric ? Number(metric[1]) : USUAL_DIAMETER;
};

/** Parts bolts into sets that hang together. Looks only at neighbours in a grid of cells, so that a large model takes no longer for each. */
function apart(bolts: readonly Bolt[]): Bolt[][] {
  const cell = REACH * bolts.reduce((most, bolt) => Math.max(most, diameterOf(bolt)), 1);
  const keyOf = (at: Vector, x = 0, y = 0, z = 0) =>
    `${Math.floor(at[0] / cell) + x} ${Math.floor(at[1] / cell) + y} ${Math.floor(at[2] / cell) + z}`;
  const cells = new Map<string, number[]>();
  for (const [i, { at }] of bolts.entries()) {
    const key = keyOf(at);
    const known = cells.get(key);
    if (known) known.push(i);
    else cells.set(key, [i]);
  }
  const seen = new Uint8Array(bolts.length);
  const sets: Bolt[][] = [];
  for (let first = 0; first < bolts.length; first += 1) {
    if (seen[first]) continue;
    seen[first] = 1;
    const found = [first];
    for (let next = 0; next < found.length; next += 1) {
      const bolt = bolts[found[next]!]!;
      for (let x = -1; x <= 1; x += 1)
        for (let y = -1; y <= 1; y += 1)
          for (let z = -1; z <= 1; z += 1)
            for (const other of cells.get(keyOf(bolt.at, x, y, z)) ?? []) {
              if (seen[other] || !hangTogether(bolt, bolts[other]!)) continue;
              seen[other] = 1;
              found.push(other);
            }
    }
    sets.push(found.sort((a, b) => a - b).map((at) => bolts[at]!));
  }
  return sets;
}

function hangTogether(a: Bolt, b: Bolt): boolean {
  const diameter = Math.min(diameterOf(a), diameterOf(b));
  const between = minus(b.at, a.at);
  return (
    Math.hypot(...between) <= REACH * diameter &&
    Math.abs(dot(a.axis, b.axis)) >= SAME_WAY &&
    Math.abs(dot(between, a.axis)) <= OFF_PLANE * diameter
  );
}
