import {
  IFCELEMENTQUANTITY,
  IFCMATERIAL,
  IFCPROPERTYSET,
  IFCPROPERTYSINGLEVALUE,
  IFCRELASSOCIATESMATERIAL,
  IFCRELDEFINESBYPROPERTIES,
  IFCRELDEFINESBYTYPE,
} from './entities.ts';
import { follow, type Line, list, type Model, number, references, text } from './model.ts';
import { metresOf } from './units.ts';

/** A property of a fastener or of its type: where it stands, and what it says. */
export interface Property {
  readonly set: string;
  readonly name: string;
  readonly value: string | number;
  /** the property says its own unit of length, in millimetres */
  readonly millimetres?: number;
  /** it is a measure of length: in the model's unit where it says none of its own */
  readonly isLength: boolean;
}

/** What the model relates to objects: their type, their property sets, their materials; by the object's number. */
export interface Related {
  readonly type: (id: number) => Line | undefined;
  readonly properties: (id: number) => readonly Property[];
  readonly materials: (id: number) => readonly string[];
}

/** Reads the relations that concern `wanted` objects (and their types), and no others: large models have hundreds of thousands. */
export function relatedTo(model: Model, wanted: ReadonlySet<number>): Related {
  const types = new Map<number, number>();
  for (const { related, relating } of relations(model, IFCRELDEFINESBYTYPE, 'RelatingType'))
    for (const id of related) if (wanted.has(id)) types.set(id, relating);
  const all = new Set([...wanted, ...types.values()]);
  const sets = collect(relations(model, IFCRELDEFINESBYPROPERTIES, 'RelatingPropertyDefinition'), all);
  const materials = collect(relations(model, IFCRELASSOCIATESMATERIAL, 'RelatingMaterial'), all);
  const read = new Map<number, readonly Property[]>();
  const propertiesOf = (set: number): readonly Property[] => {
    const known = read.get(set) ?? propertiesIn(model, model.line(set));
    read.set(set, known);
    return known;
  };
  return {
    type: (id) => {
      const type = types.get(id);
      return type === undefined ? undefined : model.line(type);
    },
    properties: (id) => [...(sets.get(id) ?? []), ...references(model.line(id)?.HasPropertySets)].flatMap(propertiesOf),
    materials: (id) =>
      (materials.get(id) ?? []).flatMap((one) => {
        const line = model.line(one);
        return line?.type === IFCMATERIAL ? (text(line.Name) ?? []) : [];
      }),
  };
}

function* relations(model: Model, kind: number, relating: string) {
  for (const id of model.ids(kind)) {
    const line = model.line(id);
    const [one] = references([line?.[relating]]);
    if (line && one !== undefined) yield { related: references(line.RelatedObjects), relating: one };
  }
}

function collect(found: ReturnType<typeof relations>, wanted: ReadonlySet<number>): ReadonlyMap<number, readonly number[]> {
  const by = new Map<number, number[]>();
  for (const { related, relating } of found) for (const id of related) if (wanted.has(id)) by.set(id, [...(by.get(id) ?? []), relating]);
  return by;
}

function propertiesIn(model: Model, set: Line | undefined): Property[] {
  const name = text(set?.Name) ?? '';
  if (set?.type === IFCELEMENTQUANTITY) {
    return references(set.Quantities).flatMap((id): Property[] => {
      const one = model.line(id);
      const value = number(one?.CountValue) ?? number(one?.LengthValue);
      return one && value !== undefined
        ? [{ set: name, name: text(one.Name) ?? '', value, isLength: number(one.LengthValue) !== undefined, ...unitOf(model, one) }]
        : [];
    });
  }
  if (set?.type !== IFCPROPERTYSET) return [];
  return references(set.HasProperties).flatMap((id): Property[] => {
    const one = model.line(id);
    if (one?.type !== IFCPROPERTYSINGLEVALUE) return [];
    const value = typedValue(one.NominalValue);
    const isLength = /LENGTHMEASURE$/i.test(measureOf(one.NominalValue));
    return value === undefined ? [] : [{ set: name, name: text(one.Name) ?? '', value, isLength, ...unitOf(model, one) }];
  });
}

function typedValue(given: unknown): string | number | undefined {
  const [only] = list([given]);
  const bare = typeof only === 'object' && only !== null && 'value' in only ? (only as { readonly value: unknown }).value : only;
  if (typeof bare === 'number') return number(bare);
  return typeof bare === 'string' ? text(bare) : undefined;
}

/** The kind of measure that a value is written with: `IFCPOSITIVELENGTHMEASURE`. */
const measureOf = (given: unknown): string =>
  typeof given === 'object' && given !== null && 'name' in given && typeof given.name === 'string' ? given.name : '';

function unitOf(model: Model, line: Line): { readonly millimetres?: number } {
  const metres = follow(model, line.Unit) ? metresOf(model, line.Unit) : undefined;
  return metres === undefined ? {} : { millimetres: metres * 1000 };
}
