import { IFCCARTESIANTRANSFORMATIONOPERATOR3D, IFCMAPPEDITEM } from './entities.ts';
import { follow, type Line, type Model, number, references } from './model.ts';
import { axesFrom, type Placement, placed, times, turned, type Vector } from './placement.ts';
import { vector } from './placements.ts';

/** Where the bolts of a fastener are, mm, and which way they point: its own z axis. One fastener may show the same bolt several times. */
export function boltPlaces(
  model: Model,
  line: Line,
  placementOf: (line: Line | undefined) => Placement | undefined,
  millimetres: number,
): readonly { readonly at: Vector; readonly axis: Vector }[] | undefined {
  const place = line.ObjectPlacement ? placementOf(follow(model, line.ObjectPlacement)) : undefined;
  if (!place?.origin.every(Number.isFinite)) return undefined;
  const shown = mappedPlaces(model, line);
  if (shown.length < 2) return [{ at: times(place.origin, millimetres), axis: place.z }];
  return shown.map((inner) => ({ at: times(placed(place, inner.origin), millimetres), axis: turned(place, inner.z) }));
}

/** Copies of one shape. Source: ISO 16739-1, IfcMappedItem, IfcCartesianTransformationOperator3D; a scale does not move the origin. */
function mappedPlaces(model: Model, line: Line): Placement[] {
  return references(follow(model, line.Representation)?.Representations)
    .map((id) => references(model.line(id)?.Items))
    .map((items) =>
      items.flatMap((id): Placement[] => {
        const item = model.line(id);
        const target = item?.type === IFCMAPPEDITEM ? follow(model, item.MappingTarget) : undefined;
        const origin = vector(follow(model, target?.LocalOrigin)?.Coordinates);
        if (target?.type !== IFCCARTESIANTRANSFORMATIONOPERATOR3D || !origin || number(target.Scale) === 0) return [];
        return [
          axesFrom(origin, vector(follow(model, target.Axis3)?.DirectionRatios), vector(follow(model, target.Axis1)?.DirectionRatios)),
        ];
      }),
    )
    .reduce((most, one) => (one.length > most.length ? one : most), []);
}
