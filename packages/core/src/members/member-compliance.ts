import { gasketArea } from '../flanges/gasket-area.ts';
import { circulant } from '../interaction/joint-compliance.ts';
import { plateCompliance } from '../interaction/plate-compliance.ts';
import { type RingSection, ringCompliance } from '../interaction/ring-compliance.ts';
import type { Layer } from '../interaction/ring-mesh.ts';
import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm, N, type Newton } from '../quantity.ts';
import type { Point } from '../sequence/group.ts';
import { gasketStiffness } from './gasket-modulus.ts';
import { type GasketGiven, type Members, STEEL } from './members.ts';
import { standardFlangeRing } from './standard-flange-ring.ts';

/** Bolts and what they bear on. */
export interface Bolting {
  readonly count: number;
  /** bolt circle of a ring, or the places of a group */
  readonly circle?: Millimetre;
  readonly places?: readonly Point[];
  readonly diameter: Millimetre;
  readonly hole: Millimetre;
  /** outer diameter of what presses: washer, else bearing face */
  readonly washer: Millimetre;
}

export type MemberModel = 'ring section' | 'plate on a bed' | 'given matrix';

/** Closing at bolt i per unit force in bolt j, mm/N, without the bolts' own give. */
export interface MemberCompliance {
  readonly rows: readonly ArrayLike<number>[];
  readonly model: MemberModel;
  /** what the members are thick between the bearing faces, as far as the dimensions say */
  readonly clampThickness?: Millimetre;
  /** extra closing per unit of highest bolt force that a gasket does not give back, mm/N; 0 without an unloading modulus */
  readonly gasketSet: number;
  /** the gasket's modulus is only typical of its kind */
  readonly gasketAssumed: boolean;
  /** what the gasket may carry when assembled, as a sum of bolt forces, N; as far as its stress window is known */
  readonly gasketWindow?: { readonly least?: Newton; readonly greatest?: Newton };
}

/** How the members of a joint give, from their dimensions; refuses dimensions that no joint has, all at once. */
export function memberCompliance(members: Members, bolting: Bolting): Outcome<MemberCompliance> {
  switch (members.kind) {
    case 'matrix':
      return done({ rows: members.rows, model: 'given matrix', gasketSet: 0, gasketAssumed: false });
    case 'plates':
      return plates(members, bolting);
    default:
      return rings(members, bolting);
  }
}

type RingMembers = Extract<Members, { kind: 'standard flange' | 'ring' }>;
type Shape = Omit<Extract<Members, { kind: 'ring' }>, 'kind'> & {
  readonly face?: { readonly outer: Millimetre; readonly height: Millimetre };
};

function rings(members: RingMembers, bolting: Bolting): Outcome<MemberCompliance> {
  const shape = shapeOf(members);
  if (!shape.ok) return shape;
  const gasket = shape.value.gasket ? gasketOf(shape.value.gasket, shape.value) : undefined;
  const { circle } = bolting;
  const wrong = [...ringNotices(shape.value, bolting), ...(gasket === 'unknown' ? [notice('gasket-modulus-needed', {})] : [])];
  if (gasket && gasket !== 'unknown') wrong.push(...gasketNotices(gasket, shape.value));
  if (wrong.length > 0 || circle === undefined || gasket === 'unknown') return refused(...wrong);
  const section = (modulus?: number): RingSection => ({
    boltCount: bolting.count,
    circle: circle / 2,
    holeDiameter: bolting.hole,
    washerDiameter: bolting.washer,
    ...layersOf(shape.value, gasket && { ...gasket, modulus: modulus ?? gasket.modulus }),
    contact: gasket ? 'gasket' : 'metal',
  });
  const first = ringCompliance(section());
  const unloading = shape.value.gasket?.unloadingModulus;
  const row = unloading === undefined ? first : ringCompliance(section(unloading));
  const { thickness, face, land } = shape.value;
  return done({
    rows: circulant(row),
    model: 'ring section',
    clampThickness: mm(2 * (thickness + (face?.height ?? 0) + (land?.height ?? 0)) + (gasket?.thickness ?? 0)),
    gasketSet: Math.max(0, sum(first) - sum(row)),
    gasketAssumed: gasket?.assumed ?? false,
    ...(gasket && shape.value.gasket ? { gasketWindow: windowOf(shape.value.gasket, gasket) } : {}),
  });
}

function windowOf({ leastStress, greatestStress }: GasketGiven, { outer, inner }: Gasket): NonNullable<MemberCompliance['gasketWindow']> {
  const area = gasketArea(outer, inner);
  return {
    ...(leastStress === undefined ? {} : { least: N(leastStress * area) }),
    ...(greatestStress === undefined ? {} : { greatest: N(greatestStress * area) }),
  };
}

const sum = (row: Float64Array) => row.reduce((total, one) => total + one, 0);

function shapeOf(members: RingMembers): Outcome<Shape> {
  if (members.kind === 'ring') return done(members);
  const ring = standardFlangeRing(members.flange);
  if (!ring.ok) return ring;
  const { inner, outer, thickness, face, hub, wall } = ring.value;
  return done({ inner, outer, thickness, face, hub, wall: { thickness: wall, side: 'inside' }, gasket: members.gasket });
}

interface Gasket {
  readonly thickness: Millimetre;
  readonly modulus: number;
  readonly inner: Millimetre;
  readonly outer: Millimetre;
  readonly assumed: boolean;
}

/** A gasket without diameters lies from the pipe's outside to the edge of the raised face. */
function gasketOf(given: GasketGiven, { inner, outer, wall, face }: Shape): Gasket | 'unknown' {
  const stiffness = gasketStiffness(given);
  if (!stiffness) return 'unknown';
  return { ...stiffness, inner: given.inner ?? mm(inner + 2 * wall.thickness), outer: given.outer ?? face?.outer ?? outer };
}

/** From the joint plane outwards: gasket or land, raised face, plate, hub, wall. */
function layersOf(shape: Shape, gasket: Gasket | undefined): { readonly layers: readonly Layer[]; readonly loaded: number } {
  const steel = { modulus: STEEL.modulus, poisson: STEEL.poisson };
  const layer = (thickness: number, inner: number, outer: number, rows: number, pierced: boolean, more: Partial<Layer> = {}): Layer => ({
    ...steel,
    thickness,
    inner: inner / 2,
    outer: outer / 2,
    rows,
    pierced,
    ...more,
  });
  const { inner, outer, thickness, wall, hub, face, land } = shape;
  const below = [
    ...(gasket ? [layer(gasket.thickness / 2, gasket.inner, gasket.outer, 1, true, { modulus: gasket.modulus, poisson: 0 })] : []),
    ...(land ? [layer(land.height, land.inner, land.outer, 1, true)] : []),
    ...(face ? [layer(face.height, inner, face.outer, 1, true)] : []),
  ];
  const [from, to] = wall.side === 'inside' ? [inner, inner + 2 * wall.thickness] : [outer - 2 * wall.thickness, outer];
  const shell = WALL_LENGTH * Math.sqrt(((from + to) / 4) * wall.thickness);
  return {
    layers: [
      ...below,
      layer(thickness, inner, outer, 4, true),
      ...(hub ? [layer(hub.length, inner, hub.outer, 2, false)] : []),
      layer(shell, from, to, 4, false, { growth: 1.6 }),
    ],
    loaded: below.length,
  };
}
/** Length of shell that still takes part, in units of √(r·t): the edge disturbance has died out. Source: shell theory, e^−π at 2.4·√(r·t). */
const WALL_LENGTH = 4;

function ringNotices({ inner, outer, thickness, wall, hub }: Shape, { circle, hole, washer, count }: Bolting): Notice[] {
  const faults: Notice[] = [];
  const fault = (what: string) => faults.push(notice('members-impossible', { what }));
  if (circle === undefined) return [notice('members-unknown', { what: 'the bolt circle' })];
  if (!(thickness > 0) || !(wall.thickness > 0) || !(inner > 0)) fault('a thickness or a diameter that is not above zero');
  if (!(inner < circle - hole && circle + hole < outer)) fault('a bolt circle that does not lie on the flange');
  if (!(washer > hole)) fault('a washer no larger than its hole');
  if (hub && hub.outer > circle - hole) fault('a hub that reaches the bolts');
  if (2 * wall.thickness >= outer - inner) fault('a wall as thick as the flange is wide');
  if (count < 2) fault('a ring of one bolt');
  return faults;
}

function gasketNotices({ thickness, modulus, inner, outer }: Gasket, shape: Shape): Notice[] {
  const faults: Notice[] = [];
  const { leastStress, greatestStress } = shape.gasket!;
  if ((leastStress ?? 0) >= (greatestStress ?? Number.POSITIVE_INFINITY))
    faults.push(notice('members-impossible', { what: 'a gasket whose least stress is not below its greatest' }));
  if (!(thickness > 0) || !(modulus > 0)) faults.push(notice('members-impossible', { what: 'a gasket without thickness or modulus' }));
  if (!(inner < outer) || inner < shape.inner || outer > shape.outer)
    faults.push(notice('members-impossible', { what: 'a gasket that does not lie on the face' }));
  return faults;
}

function plates(members: Extract<Members, { kind: 'plates' }>, bolting: Bolting): Outcome<MemberCompliance> {
  const { width, height, thickness, support, bed } = members;
  const places = bolting.places ?? [];
  const faults: Notice[] = [];
  const fault = (what: string) => faults.push(notice('members-impossible', { what }));
  if (![width, height, thickness, bed.thickness, bed.modulus].every((one) => one > 0))
    fault('a dimension or modulus that is not above zero');
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)];
  const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  if (places.length === 0) faults.push(notice('members-unknown', { what: 'the places of the bolts' }));
  else if (wide + bolting.washer > width || high + bolting.washer > height) fault('a plate that does not reach under all washers');
  if (faults.length > 0) return refused(...faults);
  const centre = { x: (Math.max(...xs) + Math.min(...xs)) / 2, y: (Math.max(...ys) + Math.min(...ys)) / 2 };
  const rows = plateCompliance({
    width,
    height,
    thickness,
    ...STEEL,
    bedThickness: support === 'mirrored' ? bed.thickness / 2 : bed.thickness,
    bedModulus: bed.modulus,
    bolts: places.map(({ x, y }) => ({ x: x - centre.x, y: y - centre.y })),
    holeDiameter: bolting.hole,
    washerDiameter: bolting.washer,
    support,
  });
  return done({ rows, model: 'plate on a bed', gasketSet: 0, gasketAssumed: false });
}
