import { IFCAXIS2PLACEMENT2D, IFCAXIS2PLACEMENT3D, IFCLOCALPLACEMENT } from './entities.ts';
import { follow, type Line, list, type Model, number } from './model.ts';
import { axesFrom, type Placement, type Vector, WORLD, within } from './placement.ts';

const DEEPEST = 64;

/** Reads placements of one model, each once; nested ones are put together. `undefined`: not a local placement, or it runs in a circle. */
export function placementReader(model: Model) {
  const known = new Map<number, Placement | undefined>();
  const read = (line: Line | undefined, depth: number): Placement | undefined => {
    if (!line) return WORLD;
    if (line.type !== IFCLOCALPLACEMENT || depth > DEEPEST) return undefined;
    if (known.has(line.expressID)) return known.get(line.expressID);
    const outer = line.PlacementRelTo ? read(follow(model, line.PlacementRelTo), depth + 1) : WORLD;
    const own = axisPlacement(model, follow(model, line.RelativePlacement));
    const place = outer && own ? within(outer, own) : undefined;
    known.set(line.expressID, place);
    return place;
  };
  return (line: Line | undefined): Placement | undefined => read(line, 0);
}

/** An axis placement of two or three dimensions. */
export function axisPlacement(model: Model, line: Line | undefined): Placement | undefined {
  if (!line) return undefined;
  const origin = vector(follow(model, line.Location)?.Coordinates);
  const reference = vector(follow(model, line.RefDirection)?.DirectionRatios);
  if (!origin) return undefined;
  if (line.type === IFCAXIS2PLACEMENT3D) return axesFrom(origin, vector(follow(model, line.Axis)?.DirectionRatios), reference);
  return line.type === IFCAXIS2PLACEMENT2D ? axesFrom(origin, WORLD.z, reference) : undefined;
}

/** Two or three coordinates; the third is 0 where it is left out. */
export function vector(value: unknown): Vector | undefined {
  const numbers = list(value).map(number);
  if (numbers.length < 2 || numbers.length > 3 || numbers.some((one) => one === undefined)) return undefined;
  return [numbers[0]!, numbers[1]!, numbers[2] ?? 0];
}
