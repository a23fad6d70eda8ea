import { IFCCONVERSIONBASEDUNIT, IFCPROJECT, IFCSIUNIT } from './entities.ts';
import { follow, list, type Model, number, text } from './model.ts';

/** Prefixes of SI units. Source: ISO 16739-1, IfcSIPrefix. */
const PREFIX: Readonly<Record<string, number>> = {
  EXA: 1e18,
  PETA: 1e15,
  TERA: 1e12,
  GIGA: 1e9,
  MEGA: 1e6,
  KILO: 1e3,
  HECTO: 1e2,
  DECA: 10,
  DECI: 0.1,
  CENTI: 0.01,
  MILLI: 1e-3,
  MICRO: 1e-6,
  NANO: 1e-9,
};

/** Millimetres of one unit of length of the model; metres where it says nothing, which is said. */
export function lengthUnit(model: Model): { readonly millimetres: number; readonly said: boolean } {
  for (const id of model.ids(IFCPROJECT)) {
    const assignment = follow(model, model.line(id)?.UnitsInContext);
    for (const one of list(assignment?.Units)) {
      const metres = metresOf(model, one);
      if (metres !== undefined) return { millimetres: metres * 1000, said: true };
    }
  }
  return { millimetres: 1000, said: false };
}

/** Metres of a unit of length; `undefined` for a unit of something else. A unit may be a multiple of another. */
export function metresOf(model: Model, reference: unknown, depth = 0): number | undefined {
  const unit = follow(model, reference);
  if (!unit || depth > 4 || text(unit.UnitType) !== 'LENGTHUNIT') return undefined;
  if (unit.type === IFCSIUNIT) return text(unit.Name) === 'METRE' ? (PREFIX[text(unit.Prefix) ?? ''] ?? 1) : undefined;
  if (unit.type !== IFCCONVERSIONBASEDUNIT) return undefined;
  const factor = follow(model, unit.ConversionFactor);
  const value = number(factor?.ValueComponent);
  const inner = metresOf(model, factor?.UnitComponent, depth + 1);
  return value === undefined || inner === undefined || !(value > 0) ? undefined : value * inner;
}
