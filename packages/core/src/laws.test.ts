import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  byCoefficients,
  byNutFactor,
  circularOrder,
  groupOrder,
  isPermutation,
  type Joint,
  jointCompliance,
  levelOf,
  looseJoint,
  mm,
  N,
  Nmm,
  onePassTargets,
  paintedNumbers,
  planJob,
  play,
  preloadForTorque,
  RULE_SETS,
  starOrder,
  synchronousStar,
  torqueForPreload,
  untilNoNutMoves,
} from './index.ts';
import { jointWith, testJob, testJoint, testLot, testTool } from './test-job.ts';

const RUNS = { seed: 20261125, numRuns: 200 };
const source = { standard: 'law', provenance: 'computed' } as const;
const sizes = fc.constantFrom(['M12', 12, 1.75], ['M24', 24, 3], ['M36', 36, 4], ['M64', 64, 6]) as fc.Arbitrary<[string, number, number]>;
const frictions = fc.oneof(
  fc.double({ min: 0.08, max: 0.4, noNaN: true }).map((k) => byNutFactor(k, source)),
  fc
    .tuple(fc.double({ min: 0.05, max: 0.3, noNaN: true }), fc.double({ min: 0.05, max: 0.3, noNaN: true }))
    .map(([a, b]) => byCoefficients(a, b, mm(30), source)),
);
const forces = fc.double({ min: 100, max: 3_000_000, noNaN: true }).map(N);

describe('torque and preload', () => {
  test('are each other’s inverse in every form', () => {
    fc.assert(
      fc.property(sizes, frictions, forces, fc.constantFrom('exact', 'linear', 'short'), ([, d, p], friction, preload, form) => {
        const size = { diameter: mm(d), pitch: mm(p) };
        expect(preloadForTorque(friction, size, torqueForPreload(friction, size, preload, form), form) / preload).toBeCloseTo(1, 12);
      }),
      RUNS,
    );
  });
  test('rise together', () => {
    fc.assert(
      fc.property(sizes, frictions, forces, forces, ([, d, p], friction, a, b) => {
        const size = { diameter: mm(d), pitch: mm(p) };
        fc.pre(a < b);
        expect(torqueForPreload(friction, size, a)).toBeLessThan(torqueForPreload(friction, size, b));
      }),
      RUNS,
    );
  });
});

describe('sequences', () => {
  test('name every bolt once, for any number of bolts and tools', () => {
    for (let n = 1; n <= 300; n += 1) {
      expect(isPermutation(starOrder(n), n)).toBe(true);
      expect(isPermutation(circularOrder(n), n)).toBe(true);
      for (const tools of [1, 2, 3, 4]) expect(isPermutation(synchronousStar(n, tools).flat(), n)).toBe(true);
    }
  });
  test('painted numbers are the inverse of the list', () => {
    for (let n = 1; n <= 120; n += 1) {
      const order = starOrder(n);
      const painted = paintedNumbers(order);
      expect(order.map((bolt) => painted[bolt - 1])).toEqual(circularOrder(n));
    }
  });
  test('a group starts at its stiffest part', () => {
    const points = fc.array(fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) }), {
      minLength: 1,
      maxLength: 40,
    });
    fc.assert(
      fc.property(points, (raw) => {
        const bolts = raw.map(({ x, y }) => ({ x: mm(x), y: mm(y) }));
        const stiffest = { x: mm(0), y: mm(0) };
        const order = groupOrder(bolts, stiffest);
        expect(isPermutation(order, bolts.length)).toBe(true);
        const reach = (bolt: number) => Math.hypot(bolts[bolt - 1]!.x, bolts[bolt - 1]!.y);
        expect(reach(order[0]!)).toBeLessThanOrEqual(Math.min(...order.map(reach)) + 1);
      }),
      RUNS,
    );
  });
});

const joints: fc.Arbitrary<Joint> = fc
  .record({
    tag: fc.string({ minLength: 1, maxLength: 6 }),
    rule: fc.constantFrom(...Object.keys(RULE_SETS)),
    boltCount: fc.integer({ min: 1, max: 60 }),
    size: fc.constantFrom('M12', 'M20', 'M24', 'M36', 'M64', 'M72', 'M23', '3/4', '1 1/8-8UN', 'x'),
    grade: fc.constantFrom('8.8', '10.9', '12.9', '4.6', 'A2-70', 'A193 B7', 'A325', 'A490', 'nonsense'),
    system: fc.constantFrom('HV', 'HR', 'HRC', 'plain') as fc.Arbitrary<'HV'>,
    clamp: fc.double({ min: 1, max: 900, noNaN: true }),
    length: fc.double({ min: 10, max: 1000, noNaN: true }),
    preload: fc.option(forces, { nil: undefined }),
    torque: fc.option(fc.double({ min: 10, max: 1e7, noNaN: true }).map(Nmm), { nil: undefined }),
    lot: fc.constantFrom('L1', 'L9', undefined),
    pressure: fc.boolean(),
  })
  .map(({ tag, rule, boltCount, size, grade, system, clamp, length, preload, torque, lot, pressure }) => {
    const positions = Array.from({ length: boltCount }, (_, i) => i + 1);
    const given = { ...(preload === undefined ? {} : { preload }), ...(torque === undefined ? {} : { torque }) };
    const joint = jointWith(
      rule,
      { size, grade, system, positions, clampThickness: mm(clamp), length: mm(length), given },
      { tag, pressure, layout: { kind: 'ring', boltCount } },
    );
    return { ...joint, subgroups: joint.subgroups.map(({ lot: _lot, ...rest }) => (lot === undefined ? rest : { ...rest, lot })) };
  });

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}

describe('the plan', () => {
  test('is the same bytes for the same job, in whatever order its joints, tools and lots came', () => {
    fc.assert(
      fc.property(fc.uniqueArray(joints, { minLength: 1, maxLength: 5, selector: ({ tag }) => tag }), (list) => {
        const tools = [
          testTool,
          { ...testTool, serial: 'T2', chart: { ...testTool.chart, certificate: { ...testTool.chart.certificate, serial: 'T2' } } },
        ];
        const once = JSON.stringify(planJob(testJob(list, { tools })));
        expect(JSON.stringify(planJob(testJob(list, { tools })))).toBe(once);
        const turned = planJob(testJob([...list].reverse(), { tools, lots: [{ ...testLot, id: 'L8' }, testLot] }));
        expect(JSON.stringify(turned.joints)).toBe(JSON.stringify(planJob(testJob(list, { tools })).joints));
      }),
      { ...RUNS, numRuns: 60 },
    );
  });
  test('never holds a number that is none, and is never ready against a reason that stops', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const [planned] = planJob(testJob([joint])).joints;
        expect(numbersIn(planned).every(Number.isFinite)).toBe(true);
        const worst = planned!.reasons.map(({ code }) => levelOf(code));
        if (planned!.verdict === 'ready') expect(worst).toEqual([]);
        if (worst.some((level) => level !== 'attention')) expect(planned!.verdict).toBe('stop');
      }),
      RUNS,
    );
  });
  test('takes only measured settings, inside the step’s window', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const measured = new Set<number>(testTool.chart.settings.map(({ torque }) => torque));
        for (const { tightening } of planJob(testJob([joint])).joints[0]!.subgroups) {
          for (const { setting, torque } of tightening?.steps ?? []) {
            if (!setting || !torque) continue;
            expect(measured.has(setting.torque)).toBe(true);
            expect(setting.torque).toBeGreaterThanOrEqual(torque.low);
            expect(setting.torque).toBeLessThanOrEqual(torque.high);
          }
        }
      }),
      RUNS,
    );
  });
  test('uses the engineer’s own sequence and says so, or stops when it is not one', () => {
    const own = planJob(testJob([{ ...testJoint, sequence: [8, 7, 6, 5, 4, 3, 2, 1] }])).joints[0]!;
    expect(own.sequence.list.flat()).toEqual([8, 7, 6, 5, 4, 3, 2, 1]);
    expect(own.reasons.map(({ code }) => code)).toContain('engineer-override');
    const broken = planJob(testJob([{ ...testJoint, sequence: [1, 1, 2, 3, 4, 5, 6, 7] }])).joints[0]!;
    expect(broken.verdict).toBe('stop');
  });
  test('holds a joint whose lot was tested turning the other part', () => {
    const lots = [{ ...testLot, testedTurning: 'head' as const }];
    const [joint] = planJob(testJob([testJoint], { lots })).joints;
    expect(joint!.reasons.map(({ code }) => code)).toContain('turned-not-tested');
  });
});

describe('elastic interaction', () => {
  const rings = fc.tuple(fc.integer({ min: 3, max: 16 }), fc.double({ min: 0, max: 0.45, noNaN: true }));
  const ring = (n: number, share: number) =>
    jointCompliance(
      Array.from({ length: n }, (_, i) =>
        Array.from({ length: n }, (__, j) => 1e-6 * share ** Math.min(Math.abs(i - j), n - Math.abs(i - j))),
      ),
      5e-7,
    );
  test('one pass with the exact targets leaves every bolt at the wanted force', () => {
    fc.assert(
      fc.property(rings, ([n, share]) => {
        const joint = ring(n, share);
        if (!joint.ok) return;
        const order = circularOrder(n).map((bolt) => bolt - 1);
        const targets = onePassTargets(joint.value, order, new Float64Array(n).fill(1000));
        const [forcesAfter] = play(looseJoint(joint.value), [{ order, target: targets }]);
        for (const force of forcesAfter!) expect(force / 1000).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });
  test('circular rounds come to rest with every bolt at its target', () => {
    const joint = ring(8, 0.3);
    if (!joint.ok) throw new Error('a ring');
    const state = looseJoint(joint.value);
    untilNoNutMoves(state, [0, 1, 2, 3, 4, 5, 6, 7], 1000);
    for (const force of state.force) expect(force).toBeGreaterThanOrEqual(999);
  });
  test('matrices that no joint has are refused', () => {
    const code = (rows: number[][]) => {
      const joint = jointCompliance(rows, 0);
      return joint.ok ? 'ok' : joint.notices[0]!.code;
    };
    expect(
      code([
        [1, 0.5],
        [0.2, 1],
      ]),
    ).toBe('compliance-not-symmetric');
    expect(
      code([
        [1, 2],
        [2, 1],
      ]),
    ).toBe('compliance-not-definite');
    expect(code([[1, 0]])).toBe('compliance-not-square');
    expect(code([])).toBe('compliance-size');
  });
});
