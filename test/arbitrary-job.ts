import fc from 'fast-check';
import {
  byCoefficients,
  byNutFactor,
  type CivilDate,
  type Friction,
  type Job,
  type Joint,
  type Layout,
  type Lot,
  type Millimetre,
  MPa,
  mm,
  N,
  Nm,
  RULE_SETS,
  type Setting,
  type Source,
  type Subgroup,
  type Tool,
} from '../packages/core/src/index.ts';

/** Jobs of all kinds, sensible and odd, for laws that must hold for every one of them. */

const source: Source = { standard: 'test report', provenance: 'certificate' };
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
type Loose<T> = { readonly [K in keyof T]: T[K] | undefined };
const given = <T extends object>(entries: Loose<T>): T =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as T;

const SIZES = ['M8', 'M12', 'M16', 'M20', 'M24', 'M24x2', 'M30', 'M36', 'M48', 'M72', '3/4', '7/8', '1-1/8', '1 1/8-8UN', '2', 'M99', ''];
const GRADES = ['8.8', '10.9', '12.9', '9.8', '4.6', 'A2-70', 'A193 B7', 'F3125 A325', 'F3125 A490', 'F3125 F1852', 'F3125 A325M', '?'];

export const friction: fc.Arbitrary<Friction> = fc.oneof(
  fc.tuple(within(0.05, 0.5), maybe(within(0, 0.2))).map(([k, variation]) => byNutFactor(k, source, variation)),
  fc
    .tuple(within(0.02, 0.6), within(0.02, 0.6), within(8, 100), maybe(within(0, 0.2)))
    .map(([thread, bearing, diameter, variation]) => byCoefficients(thread, bearing, mm(diameter), source, variation)),
);

const usualFriction = fc
  .tuple(within(0.08, 0.16), within(0.08, 0.16))
  .map(([thread, bearing]): Friction => byCoefficients(thread, bearing, mm(1.3 * 20), source, 0.05));

/** Two gears of rising torque: coarse or fine, narrow or over all that bolts need. */
const goodChart: fc.Arbitrary<Setting[]> = fc
  .oneof(
    fc.tuple(within(5, 500), within(1.01, 1.15), fc.integer({ min: 1, max: 150 })),
    fc.tuple(within(5, 50), within(1.02, 1.05), fc.constant(200)),
  )
  .map(([lowest, ratio, count]) =>
    Array.from({ length: count }, (_, i) => ({
      labels: [i < count / 2 ? '1' : '2', String(i + 1)],
      torque: Nm(Math.min(9e4 + i, lowest * ratio ** i)),
    })),
  );
const oddTorque = fc.constantFrom(0, -5, Number.NaN, Number.POSITIVE_INFINITY, 1e12, 300, 301);
const oddChart: fc.Arbitrary<Setting[]> = fc.array(
  fc
    .record({
      gear: fc.constantFrom('1', '2', ''),
      step: fc.constantFrom('1', '2', '3', '2,5', 'x', ''),
      torque: oddTorque,
      loosening: fc.boolean(),
    })
    .map(({ gear, step, torque, loosening }) => ({
      labels: [gear, step],
      torque: Nm(torque),
      ...(loosening ? { looseningOnly: true } : {}),
    })),
  { maxLength: 6 },
);

const date = fc.oneof(
  { weight: 3, arbitrary: fc.constant('2027-11-25') },
  fc.constantFrom('2025-11-25', '2026-11-20', '2026-11-25', '2026-12-01'),
) as fc.Arbitrary<CivilDate>;

const tool = (serial: string): fc.Arbitrary<Tool> =>
  fc
    .record({
      kind: fc.constantFrom('battery', 'hydraulic', 'click wrench' as const),
      settings: fc.oneof({ weight: 6, arbitrary: goodChart }, oddChart),
      arm: maybe(within(50, 400)),
      rating: maybe(within(100, 5000)),
      repeatability: within(0, 0.1),
      uncertainty: within(0, 0.03),
      interpolation: fc.boolean(),
      own: fc.integer({ min: 0, max: 9 }),
      due: date,
    })
    .map(({ kind, settings, arm, rating, repeatability, uncertainty, interpolation, own, due }) => ({
      serial,
      name: 'wrench',
      kind,
      chart: {
        scales: [{ name: 'gear' }, { name: 'step' }],
        settings,
        repeatability,
        interpolation,
        certificate: {
          number: `C-${serial}`,
          serial: own === 0 ? 'other' : serial,
          calibrated: '2025-06-01' as CivilDate,
          due,
          uncertainty,
        },
      },
      sockets: [{ acrossFlats: mm(41), outerDiameter: mm(58) }],
      ...given<Pick<Tool, 'arm' | 'armRating'>>({
        arm: arm as Millimetre | undefined,
        armRating: rating === undefined ? undefined : Nm(rating),
      }),
    }));

const lot = (id: string): fc.Arbitrary<Lot> =>
  fc
    .record({
      kClass: maybe(fc.constantFrom('K0', 'K1', 'K2' as const)),
      friction: maybe(friction),
      tested: fc.boolean(),
      failed: fc.integer({ min: 0, max: 9 }),
      verified: maybe(within(50, 3000)),
    })
    .map(({ kClass, friction: own, tested, failed, verified }) => ({
      id,
      tested,
      failed: failed === 0,
      ...given<Pick<Lot, 'kClass' | 'friction' | 'verifiedTorque'>>({
        kClass,
        friction: own,
        verifiedTorque: verified === undefined ? undefined : Nm(verified),
      }),
    }));

const point = fc
  .record({ x: fc.integer({ min: -5, max: 5 }), y: fc.integer({ min: -5, max: 5 }) })
  .map(({ x, y }) => ({ x: mm(x * 60), y: mm(y * 60) }));
const layout: fc.Arbitrary<Layout> = fc.oneof(
  fc
    .tuple(fc.integer({ min: 0, max: 60 }), maybe(within(500, 4000)))
    .map(([boltCount, circle]): Layout => ({ kind: 'ring', boltCount, ...(circle === undefined ? {} : { circle: mm(circle) }) })),
  fc.array(point, { maxLength: 16 }).map((bolts): Layout => ({ kind: 'group', bolts })),
);

const subgroup = (positions: readonly number[], id: string): fc.Arbitrary<Subgroup> =>
  fc
    .record({
      size: fc.constantFrom(...SIZES),
      grade: fc.constantFrom(...GRADES),
      system: fc.constantFrom('HV', 'HR', 'HRC', 'plain' as const),
      length: maybe(within(20, 600)),
      clamp: maybe(within(5, 500)),
      sloped: fc.constantFrom(0, 1, 2 as const),
      lot: maybe(fc.constantFrom('L1', 'L2', 'L3', 'L9')),
      friction: maybe(friction),
      turned: fc.constantFrom('nut', 'head' as const),
      preload: maybe(within(1, 2e6)),
      torque: maybe(within(1, 20_000)),
      stress: maybe(within(50, 900)),
    })
    .map((one) => ({
      id,
      positions,
      size: one.size,
      grade: one.grade,
      system: one.system,
      slopedFaces: one.sloped,
      turned: one.turned,
      retightened: false,
      given: given<Subgroup['given']>({
        preload: one.preload === undefined ? undefined : N(one.preload),
        torque: one.torque === undefined ? undefined : Nm(one.torque),
        boltStress: one.stress === undefined ? undefined : MPa(one.stress),
      }),
      ...given<Pick<Subgroup, 'length' | 'clampThickness' | 'lot' | 'friction'>>({
        length: one.length as Millimetre | undefined,
        clampThickness: one.clamp as Millimetre | undefined,
        lot: one.lot,
        friction: one.friction,
      }),
    }));

/** Bolts that fit their rule set, so that many plans come to a setting. */
const FITTING: readonly (readonly [rule: string, bolt: Partial<Subgroup>])[] = [
  ['en1090-torque', { size: 'M20', grade: '10.9', system: 'HV', kClass: 'K2', lot: 'L1' }],
  ['en1090-combined', { size: 'M24', grade: '10.9', system: 'HV', kClass: 'K1', clampThickness: mm(60) }],
  ['de-reduced-torque', { size: 'M24', grade: '10.9', system: 'HV', kClass: 'K1' }],
  ['rcsc-calibrated-wrench', { size: '7/8', grade: 'F3125 A325', lot: 'L1' }],
  ['rcsc-turn-of-nut', { size: '3/4', grade: 'F3125 A490', length: mm(76.2) }],
  ['flange-bolt-stress', { size: '1-1/8', grade: 'A193 B7', given: { boltStress: MPa(310) } }],
  ['vdi-2230', { size: 'M16', grade: '8.8' }],
  ['as-specified', { size: 'M30', grade: '10.9', given: { preload: N(250_000) } }],
];

const joint = (tag: string): fc.Arbitrary<Joint> =>
  fc.tuple(layout, fc.integer({ min: 0, max: 5 })).chain(([where, cut]) => {
    const bolts = Array.from({ length: where.kind === 'ring' ? where.boltCount : where.bolts.length }, (_, i) => i + 1);
    const parts = cut === 5 ? [bolts, [1, 99]] : cut > 0 && cut < bolts.length ? [bolts.slice(0, cut), bolts.slice(cut)] : [bolts];
    return fc
      .record({
        rule: fc.constantFrom(...Object.keys(RULE_SETS), 'own'),
        edition: fc.oneof({ weight: 8, arbitrary: fc.constant(undefined) }, fc.constantFrom('2008', '2014', '1986', '1066')),
        subgroups: fc.tuple(...parts.map((positions, i) => subgroup(positions, String(i)))),
        fitting: fc.option(fc.tuple(fc.constantFrom(...FITTING), usualFriction), { nil: undefined, freq: 3 }),
        tools: fc.oneof(fc.constant([]), fc.subarray(['T1', 'T2', 'T10', 'T9'])),
        toolsAtOnce: fc.constantFrom(1, 2, 4),
        sequence: fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, fc.shuffledSubarray(bolts), fc.constant([1, 1, 2])),
        pressure: fc.boolean(),
        permit: maybe(fc.constant('P-1')),
        zone: maybe(fc.constantFrom('none', '1')),
        reactionPoint: maybe(fc.constant('flange edge')),
        reactionLimit: maybe(within(1000, 50_000)),
        wall: maybe(within(10, 200)),
        datum: fc.boolean(),
      })
      .map(({ edition, sequence, permit, zone, reactionPoint, reactionLimit, wall, datum, fitting, ...one }) => ({
        tag,
        title: 'joint',
        layout: where,
        ...one,
        access: given<Joint['access']>({
          reactionPoint,
          reactionLimit: reactionLimit === undefined ? undefined : N(reactionLimit),
          wall: wall === undefined ? undefined : mm(wall),
        }),
        ...given<Pick<Joint, 'edition' | 'sequence' | 'permit' | 'zone' | 'datum'>>({
          edition,
          sequence,
          permit,
          zone,
          datum: datum ? { boltOne: 'top', direction: 'clockwise', viewedFrom: 'outside' } : undefined,
        }),
        ...(fitting
          ? {
              rule: fitting[0][0],
              subgroups: one.subgroups.map((own) => ({ ...own, given: {}, friction: fitting[1], ...fitting[0][1] })),
              tools: [],
              pressure: false,
              access: {},
              zone: 'none',
            }
          : {}),
      }));
  });

export const arbitraryJob: fc.Arbitrary<Job> = fc
  .record({
    joints: fc.subarray(['A-1', 'A-2', 'A-10', 'B'], { minLength: 1 }).chain((tags) => fc.tuple(...tags.map(joint))),
    tools: fc.subarray(['T1', 'T2', 'T10'], { minLength: 1 }).chain((serials) => fc.tuple(...serials.map(tool))),
    lots: fc.subarray(['L1', 'L2', 'L3']).chain((ids) => fc.tuple(...ids.map(lot))),
    wet: fc.integer({ min: 0, max: 9 }),
    zone: fc.option(fc.constantFrom('none', 'none', '2'), { nil: undefined, freq: 6 }),
    until: date,
  })
  .map(({ joints, tools, lots, wet, zone, until }) => ({
    title: 'job',
    site: 'site',
    workDate: '2026-11-25' as CivilDate,
    units: 'metric',
    conditions: { wet: wet === 0, atHeight: wet > 5, ...(zone === undefined ? {} : { zone }) },
    people: [{ name: 'A', role: 'operator', qualifiedUntil: until }],
    joints,
    tools,
    lots,
  }));
