import { type Notice, notice, type Outcome } from '@clampwright/core';
import { type Bolt, fastenersOf } from './fasteners.ts';
import { type Grip, gripOf } from './grip.ts';
import { type BoltGroup, groupBolts, type Held } from './group.ts';
import { type FoundLayout, layoutOf } from './layout.ts';
import { type Model, text } from './model.ts';
import { type ParserPlace, withIfc } from './open-ifc.ts';
import { dot, minus } from './placement.ts';
import { planeOf } from './plane.ts';
import { lengthUnit } from './units.ts';

/** A joint as the model tells of it: what a planner looks at before it becomes a joint list. Lengths in mm. */
export interface ModelJoint {
  readonly tag: string;
  /** what holds its bolts together in the model */
  readonly held: Held;
  /** in the order of their numbers */
  readonly bolts: readonly Bolt[];
  readonly layout: FoundLayout;
  /** connected elements by name */
  readonly connects: readonly string[];
  readonly grip: Grip;
}

export interface ReadModel {
  readonly schema: string;
  /** millimetres of the model's unit of length */
  readonly unit: number;
  readonly joints: readonly ModelJoint[];
  readonly notices: readonly Notice[];
}

/** Bolts stand out of their plane by less than this, mm; more, and it is said. */
const FLAT = 2;
/** A bolt is longer than its grip by nut, washers and protrusion: 0.8 to 3 diameters are usual. Own bounds. */
const LONGER = { least: 0.5, most: 3.5 } as const;

/**
 * Reads the bolted joints of an IFC model (2x3, 4, 4.3): fasteners with size, length, grade and standard from attributes, property sets
 * and names, grouped by what they connect; what was not understood is said with its reason. Nothing is guessed: what two places of the
 * model say differently is left open. Works in Node and, with the address of the parser's wasm file, in the browser.
 */
export const readModel = (bytes: Uint8Array, file: string, place: ParserPlace = {}): Promise<Outcome<ReadModel>> =>
  withIfc(bytes, file, place, (model) => understood(model, file));

function understood(model: Model, file: string): ReadModel {
  const { millimetres, said } = lengthUnit(model);
  const found = fastenersOf(model, file, millimetres);
  const notices: Notice[] = [...(said ? [] : [notice('model-unit-missing', {}, { file })]), ...found.notices];
  if (found.bolts.length === 0) notices.push(notice('model-without-bolts', {}, { file }));
  const names = new Map<string, number>();
  const joints = groupBolts(model, found.bolts).map((group) => {
    const joint = jointOf(model, group, freeTag(tagOf(model, group), names), millimetres);
    notices.push(...noticesOf(joint, group, file));
    return joint;
  });
  return { schema: model.schema, unit: millimetres, joints, notices };
}

function jointOf(model: Model, group: BoltGroup, tag: string, millimetres: number): ModelJoint {
  const { bolts, connects, held } = group;
  const plane = planeOf(
    bolts.map(({ at }) => at),
    bolts.map(({ axis }) => axis),
  );
  const layout = layoutOf(
    bolts.map(({ at }) => {
      const from = minus(at, plane.centre);
      return { x: dot(from, plane.u), y: dot(from, plane.v) };
    }),
  );
  const grip = gripOf(model, connects, plane.normal, millimetres);
  return {
    tag,
    held,
    layout,
    grip: believable(grip, bolts),
    bolts: layout.order.map((at) => bolts[at]!),
    connects: connects.map((id) => nameOf(model, id)),
  };
}

/** A sum of plates that cannot go with the bolt's length misses a part, and is not taken. */
function believable(grip: Grip, bolts: readonly Bolt[]): Grip {
  if (!grip.known) return grip;
  const fits = bolts.every(({ length, size }) => {
    const diameter = Number(/^M([\d.]+)/.exec(size ?? '')?.[1] ?? Number.NaN);
    if (length === undefined || Number.isNaN(diameter)) return true;
    return length - grip.value >= LONGER.least * diameter && length - grip.value <= LONGER.most * diameter;
  });
  return fits ? grip : { known: false, why: 'the sum does not go with the bolt length', part: grip.parts.join(' + ') };
}

const nameOf = (model: Model, id: number): string => text(model.line(id)?.Name) ?? text(model.line(id)?.Tag) ?? `#${id}`;

function tagOf(model: Model, { whole, connects, bolts }: BoltGroup): string {
  if (whole !== undefined) return nameOf(model, whole);
  const between = connects.map((id) => nameOf(model, id));
  return between.length > 0 ? between.slice(0, 3).join(' / ') : `bolts at ${bolts[0]!.at.map((one) => Math.round(one)).join(' ')}`;
}

function freeTag(tag: string, taken: Map<string, number>): string {
  const count = (taken.get(tag) ?? 0) + 1;
  taken.set(tag, count);
  return count === 1 ? tag : `${tag} (${count})`;
}

function noticesOf({ tag, grip, bolts }: ModelJoint, group: BoltGroup, file: string): Notice[] {
  const place = { file, path: tag };
  const plane = planeOf(
    group.bolts.map(({ at }) => at),
    group.bolts.map(({ axis }) => axis),
  );
  const twice = bolts.filter((bolt, at) => bolts.findIndex((one) => Math.hypot(...minus(one.at, bolt.at)) < 1) !== at);
  return [
    ...(plane.off > FLAT ? [notice('joint-not-flat', { tag, off: Math.round(plane.off * 10) / 10 }, place)] : []),
    ...(twice.length > 0 ? [notice('bolts-on-one-spot', { tag, bolts: twice.length }, place)] : []),
    ...(group.held === 'distance' ? [notice('joint-by-distance', { tag, bolts: bolts.length }, place)] : []),
    ...(bolts.some(({ grade }) => grade === undefined) ? [notice('fastener-without-grade', { tag }, place)] : []),
    ...(grip.known ? [] : [notice('grip-open', { tag, why: grip.part === undefined ? grip.why : `${grip.why}: ${grip.part}` }, place)]),
  ];
}
