import { findGrade, type Notice, notice, type Place } from '@clampwright/core';
import { readName, sizeOf, systemOf } from './designation.ts';
import { IFCMECHANICALFASTENER } from './entities.ts';
import { boltPlaces } from './mapped-bolts.ts';
import { type Line, type Model, number, text } from './model.ts';
import type { Vector } from './placement.ts';
import { placementReader } from './placements.ts';
import { type Property, type Related, relatedTo } from './properties.ts';

/** What the model says of one bolt, with the place in the model of everything that was found. Lengths in mm. */
export interface Bolt {
  /** line of the fastener, which may stand for several bolts */
  readonly id: number;
  readonly name: string;
  readonly at: Vector;
  readonly axis: Vector;
  readonly size?: string;
  readonly length?: number;
  readonly grade?: string;
  readonly standard?: string;
  readonly system?: 'HR' | 'HV' | 'HRC';
  /** where each figure was found */
  readonly from: Readonly<Record<string, string>>;
}

/** One place that says a figure. */
interface Said<T> {
  readonly value: T;
  readonly from: string;
}

const NAMES = {
  diameter: /^(nominal ?diameter|bolt ?diameter|diameter|bolt ?size|size|thread|(schrauben|nenn)?durchmesser|gewinde)$/i,
  length: /^(nominal ?length|bolt ?length|length|(schrauben|nenn)?länge)$/i,
  grade: /^((bolt|steel|strength) ?grade|grade|strength ?class|property ?class|class|festigkeitsklasse|güte|material)$/i,
  standard: /^((bolt|assembly|product|reference) ?standard|standard|norm|produktnorm)$/i,
  count: /^(count|(number|no\.?) of bolts|bolt ?count|quantity|anzahl( der)?( schrauben)?|schraubenanzahl)$/i,
} as const;

/** Kinds of fasteners that are no bolts. Source: ISO 16739-1, IfcMechanicalFastenerTypeEnum. */
const NO_BOLT = /^(DOWEL|NAIL|NAILPLATE|RIVET|STAPLE|SHEARCONNECTOR|STUDSHEARCONNECTOR|COUPLER|RAILJOINT|RAILFASTENING|CHAIN|ROPE)$/;
const PART_OF_BOLT = /^\s*(hex(agon)?\s+)?(nut|washer|mutter|scheibe|unterlegscheibe)\b/i;

export interface Fasteners {
  readonly bolts: readonly Bolt[];
  readonly notices: readonly Notice[];
}

/** Every bolt of a model, as far as it was understood; what was not is said with its reason. */
export function fastenersOf(model: Model, file: string, millimetres: number): Fasteners {
  const ids = model.ids(IFCMECHANICALFASTENER);
  const related = relatedTo(model, new Set(ids));
  const placementOf = placementReader(model);
  const bolts: Bolt[] = [];
  const notices: Notice[] = [];
  for (const id of ids) {
    const line = model.line(id);
    if (!line) {
      notices.push(notice('fastener-unreadable', {}, { file, path: `#${id}` }));
      continue;
    }
    const name = text(line.Name) ?? text(line.ObjectType) ?? `#${id}`;
    const at: Place = { file, path: `#${id} ${name}` };
    const type = related.type(id);
    const kind = [text(line.PredefinedType), text(type?.PredefinedType)].find((one) => one !== undefined && one !== 'NOTDEFINED');
    if ((kind !== undefined && NO_BOLT.test(kind)) || PART_OF_BOLT.test(name)) {
      notices.push(notice('fastener-no-bolt', { kind: kind ?? name }, at));
      continue;
    }
    const places = boltPlaces(model, line, placementOf, millimetres);
    if (!places) {
      notices.push(notice('fastener-without-place', {}, at));
      continue;
    }
    const says = saysOf(id, line, type, related, millimetres);
    const said: Notice[] = [];
    const pick = <T extends string | number>(
      what: string,
      found: readonly Said<T>[],
      same: (a: T, b: T) => boolean,
    ): Said<T> | undefined => {
      const [first] = found;
      const other = first && found.find((one) => !same(one.value, first.value));
      if (!first || !other) return first;
      said.push(
        notice('fastener-contradicts', { what, first: `${first.value} (${first.from})`, second: `${other.value} (${other.from})` }, at),
      );
      return undefined;
    };
    const equal = (a: string, b: string) => a === b;
    const size = pick('size', says.size, equal);
    const length = pick('length', says.length, (a, b) => Math.abs(a - b) < 0.5);
    const grade = pick('grade', says.grade, equal);
    const standard = pick('standard', says.standard, (a, b) => a.replace(/\s/g, '') === b.replace(/\s/g, ''));
    const count = pick('number of bolts', says.count, (a, b) => a === b);
    if (!size && says.size.length === 0) said.push(notice('fastener-without-size', { tried: says.unread || '–' }, at));
    if (count && count.value !== places.length) said.push(notice('fastener-count', { said: count.value, found: places.length }, at));
    notices.push(...said);
    const from = Object.fromEntries(
      Object.entries({ size, length, grade, standard }).flatMap(([key, one]) => (one ? [[key, one.from]] : [])),
    ) as Bolt['from'];
    const system = systemOf(standard?.value);
    for (const place of places)
      bolts.push({
        id,
        name,
        ...place,
        from,
        ...(size ? { size: size.value } : {}),
        ...(length ? { length: length.value } : {}),
        ...(grade ? { grade: grade.value } : {}),
        ...(standard ? { standard: standard.value } : {}),
        ...(system ? { system } : {}),
      });
  }
  return { bolts, notices };
}

interface Says {
  readonly size: readonly Said<string>[];
  readonly length: readonly Said<number>[];
  readonly grade: readonly Said<string>[];
  readonly standard: readonly Said<string>[];
  readonly count: readonly Said<number>[];
  /** what looked like a diameter and is no size */
  readonly unread: string;
}

/** Everything that says a figure: attributes first, then properties, then names; of the fastener before its type. */
function saysOf(id: number, line: Line, type: Line | undefined, related: Related, millimetres: number): Says {
  const size: Said<string>[] = [];
  const length: Said<number>[] = [];
  const grade: Said<string>[] = [];
  const standard: Said<string>[] = [];
  const count: Said<number>[] = [];
  const unread: string[] = [];
  const diameter = (value: number, from: string) => {
    const found = sizeOf(value);
    if (found === undefined) unread.push(`${Math.round(value * 100) / 100} mm (${from})`);
    else size.push({ value: found, from });
  };
  const gradeText = (value: string, from: string) => {
    const found = findGrade(value);
    const named = found.ok ? found.value.id : readName(value).grade;
    if (named !== undefined) grade.push({ value: named, from });
  };
  const owners = [
    [line, id, ''],
    [type, type?.expressID, 'type: '],
  ] as const;
  for (const [one, , whose] of owners) {
    const d = number(one?.NominalDiameter);
    const l = number(one?.NominalLength);
    if (d !== undefined) diameter(d * millimetres, `${whose}NominalDiameter`);
    if (l !== undefined && l > 0) length.push({ value: l * millimetres, from: `${whose}NominalLength` });
  }
  for (const [, owner, whose] of owners) {
    for (const property of owner === undefined ? [] : related.properties(owner)) {
      const from = `${whose}${property.set}.${property.name}`;
      const name = property.name
        .replace(/_/g, ' ')
        .replace(/(?<=\p{Ll})(?=\p{Lu})/gu, ' ')
        .trim();
      const { value } = property;
      const lengthOf = inMillimetres(property, millimetres);
      if (NAMES.diameter.test(name)) {
        const named = typeof value === 'string' ? readName(value).size : undefined;
        if (named !== undefined) size.push({ value: named, from });
        else if (lengthOf !== undefined) diameter(lengthOf, from);
      } else if (NAMES.length.test(name) && lengthOf !== undefined && lengthOf > 0) length.push({ value: lengthOf, from });
      else if (NAMES.grade.test(name)) gradeText(String(value), from);
      else if (NAMES.standard.test(name) && typeof value === 'string') standard.push({ value: readName(value).standard ?? value, from });
      else if (NAMES.count.test(name) && Number(value) >= 1) count.push({ value: Math.round(Number(value)), from });
    }
    for (const material of owner === undefined ? [] : related.materials(owner)) gradeText(material, `${whose}material`);
  }
  for (const [one, , whose] of owners) {
    for (const key of ['Name', 'ObjectType', 'ElementType', 'Tag', 'Description'] as const) {
      const written = text(one?.[key]);
      if (written === undefined) continue;
      const from = `${whose}${key}`;
      const named = readName(written);
      if (named.size !== undefined) size.push({ value: named.size, from });
      if (named.length !== undefined) length.push({ value: named.length, from });
      if (named.grade !== undefined) gradeText(named.grade, from);
      if (named.standard !== undefined) standard.push({ value: named.standard, from });
    }
  }
  return { size, length, grade, standard, count, unread: unread.join(', ') };
}

/** A number that is no measure of length is taken for millimetres only where the model counts in them. */
function inMillimetres({ value, millimetres, isLength }: Property, model: number): number | undefined {
  if (typeof value === 'string') {
    const parts = /^\s*([\d.,]+)\s*(mm|cm|m|in|")\s*$/i.exec(value);
    const factor = parts && { mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4 }[parts[2]!.toLowerCase()];
    return parts && factor !== undefined && factor !== null ? Number(parts[1]!.replace(',', '.')) * factor : undefined;
  }
  if (millimetres !== undefined) return value * millimetres;
  return isLength || model === 1 ? value * model : undefined;
}
