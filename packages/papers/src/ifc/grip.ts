import { IFCEXTRUDEDAREASOLID, IFCRECTANGLEPROFILEDEF } from './entities.ts';
import { follow, type Line, type Model, number, references, text } from './model.ts';
import { dot, type Placement, turned, unit, type Vector, WORLD, within } from './placement.ts';
import { axisPlacement, placementReader, vector } from './placements.ts';

/** What the bolts of a joint clamp, as far as the shapes of the connected elements tell. */
export type Grip =
  | { readonly known: true; readonly value: number; readonly parts: readonly string[] }
  | {
      readonly known: false;
      readonly why:
        | 'nothing is connected'
        | 'a shape is not a plate'
        | 'a plate lies another way'
        | 'the sum does not go with the bolt length';
      readonly part?: string;
    };

/** cos 1° */
const ALONG = 0.99985;

/** The sum of the thicknesses of plates along the bolts: only plates drawn as one extruded outline, and only where every connected element is one. */
export function gripOf(model: Model, connects: readonly number[], axis: Vector, millimetres: number): Grip {
  if (connects.length < 2) return { known: false, why: 'nothing is connected' };
  const placementOf = placementReader(model);
  let value = 0;
  const parts: string[] = [];
  for (const id of connects) {
    const element = model.line(id);
    const part = text(element?.Name) ?? `#${id}`;
    const solid = onlySolid(model, element);
    const place = element && solid ? placementOf(follow(model, element.ObjectPlacement)) : undefined;
    if (!solid || !place) return { known: false, why: 'a shape is not a plate', part };
    const thickness = thicknessAlong(model, solid, place, axis);
    if (thickness === undefined) return { known: false, why: 'a plate lies another way', part };
    value += thickness * millimetres;
    parts.push(`${part} ${Math.round(thickness * millimetres * 100) / 100} mm`);
  }
  return { known: true, value, parts };
}

function onlySolid(model: Model, element: Line | undefined): Line | undefined {
  const bodies = references(follow(model, element?.Representation)?.Representations)
    .map((id) => model.line(id))
    .filter((one) => text(one?.RepresentationIdentifier) === 'Body');
  const items = bodies.flatMap((one) => references(one?.Items));
  const [only] = items;
  const solid = items.length === 1 && only !== undefined ? model.line(only) : undefined;
  return solid?.type === IFCEXTRUDEDAREASOLID ? solid : undefined;
}

function thicknessAlong(model: Model, solid: Line, place: Placement, axis: Vector): number | undefined {
  const own = solid.Position ? axisPlacement(model, follow(model, solid.Position)) : WORLD;
  const way = unit(vector(follow(model, solid.ExtrudedDirection)?.DirectionRatios) ?? WORLD.z);
  const depth = number(solid.Depth);
  if (!own || !way || depth === undefined || !(depth > 0)) return undefined;
  const seen = within(place, own);
  if (Math.abs(dot(turned(seen, way), axis)) >= ALONG) return depth;
  const profile = follow(model, solid.SweptArea);
  if (profile?.type !== IFCRECTANGLEPROFILEDEF) return undefined;
  const flat = profile.Position ? axisPlacement(model, follow(model, profile.Position)) : WORLD;
  if (!flat) return undefined;
  const outline = within(seen, flat);
  if (Math.abs(dot(outline.x, axis)) >= ALONG) return number(profile.XDim);
  return Math.abs(dot(outline.y, axis)) >= ALONG ? number(profile.YDim) : undefined;
}
