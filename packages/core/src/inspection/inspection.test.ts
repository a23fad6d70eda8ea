import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RULE_SETS, type RuleSetId } from '../rules/index.ts';
import { drawSample } from './draw-sample.ts';
import { howInspected } from './how-inspected.ts';
import { inspectionRecord } from './inspection-record.ts';
import { beforePressure, inspectionTime } from './inspection-time.ts';
import { afterReject, beginSequential, nextSequential, type SequentialLines, type SequentialState } from './sequential.ts';

const RUNS = { seed: 20261127, numRuns: 300 };
const joints = fc.uniqueArray(fc.record({ tag: fc.string({ minLength: 1, maxLength: 4 }), bolts: fc.integer({ min: 1, max: 80 }) }), {
  minLength: 1,
  maxLength: 30,
  selector: ({ tag }) => tag,
});

describe('the draw', () => {
  test('has its size, no bolt twice, none that is not there; every joint is seen where the sample allows', () => {
    fc.assert(
      fc.property(joints, fc.double({ min: 0.01, max: 1, noNaN: true }), fc.nat(), (list, share, seed) => {
        const all = list.reduce((sum, { bolts }) => sum + bolts, 0);
        const size = Math.max(1, Math.round(share * all));
        const drawn = drawSample(list, size, seed);
        if (!drawn.ok) throw new Error('refused');
        const by = new Map(list.map(({ tag, bolts }) => [tag, bolts]));
        let count = 0;
        for (const { tag, bolts } of drawn.value.joints) {
          expect(new Set(bolts).size).toBe(bolts.length);
          for (const bolt of bolts) expect(bolt >= 1 && bolt <= by.get(tag)!).toBe(true);
          if (size >= list.length) expect(bolts.length).toBeGreaterThan(0);
          count += bolts.length;
        }
        expect(count).toBe(size);
      }),
      RUNS,
    );
  });
  test('is the same for the same seed in whatever order the joints came, another for another seed', () => {
    const list = [
      { tag: 'B', bolts: 40 },
      { tag: 'A', bolts: 60 },
      { tag: 'C', bolts: 12 },
    ];
    const bolts = (of: typeof list, seed: number) => {
      const drawn = drawSample(of, 11, seed);
      return drawn.ok ? drawn.value.joints : [];
    };
    expect(bolts([...list].reverse(), 7)).toEqual(bolts(list, 7));
    expect(bolts(list, 8)).not.toEqual(bolts(list, 7));
  });
  test('gives every bolt the same chance: counts of 4 000 draws stay within five standard deviations', () => {
    const counts = new Array<number>(20).fill(0);
    for (let seed = 0; seed < 4000; seed += 1) {
      const drawn = drawSample([{ tag: 'A', bolts: 20 }], 5, seed);
      if (drawn.ok) for (const bolt of drawn.value.joints[0]!.bolts) counts[bolt - 1]! += 1;
    }
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(5 * Math.sqrt(4000 * 0.25 * 0.75));
  });
  test.each([
    [0, 1],
    [21, 1],
    [2.5, 1],
    [5, -1],
    [5, 0.5],
  ])('%d bolts by seed %d are refused', (size, seed) => expect(drawSample([{ tag: 'A', bolts: 20 }], size, seed).ok).toBe(false));
});

/** Lines made up for the test; those of EN 1090-2 annex M stand in the standard. */
const lines: SequentialLines = {
  least: 5,
  most: 8,
  accept: [null, null, null, null, 0, 0, 1, 1],
  reject: [2, 2, 2, 2, 2, 2, 2, 2],
};
const begun = (): SequentialState => {
  const state = beginSequential('A', lines);
  if (!state.ok) throw new Error('refused');
  return state.value;
};
const fed = (defects: string) =>
  [...defects].reduce((state, mark, at) => {
    const next = nextSequential(state, `J1/${at + 1}`, mark === 'x');
    if (!next.ok) throw new Error(next.notices[0]!.code);
    return next.value;
  }, begun());

describe('the sequential plan', () => {
  test.each([
    ['....', 'go on'],
    ['.....', 'accept'],
    ['x....', 'go on'],
    ['x......', 'accept'],
    ['xx', 'reject'],
    ['x.....x', 'reject'],
  ])('%s: %s', (defects, verdict) => expect(fed(defects).verdict).toBe(verdict));
  test('the same bolt twice is refused and nothing is lost', () => {
    const state = fed('...');
    const again = nextSequential(state, 'J1/2', false);
    expect(again.ok ? [] : again.notices.map(({ code }) => code)).toEqual(['sequential-twice']);
    expect(state.inspected).toHaveLength(3);
  });
  test('after the verdict no bolt counts', () => {
    const over = nextSequential(fed('.....'), 'J1/9', true);
    expect(over.ok ? [] : over.notices.map(({ code }) => code)).toEqual(['sequential-over']);
  });
  test('a reject says what it triggers', () => expect(afterReject({ type: 'B' })).toBe('check-all-in-subgroup'));
  test('lines that cross, are short or do not decide are refused, all at once', () => {
    const wrong = beginSequential('A', { least: 3, most: 8, accept: [2, null, null], reject: [2, null, null] });
    expect(wrong.ok ? [] : wrong.notices.map(({ code }) => code)).toEqual([
      'sequential-limits',
      'sequential-short',
      'sequential-crossed',
      'sequential-undecided',
    ]);
  });
});

test('never a torque check on bolts that were turned past yield by method, or whose end is a spline or washer', () => {
  for (const rule of Object.keys(RULE_SETS) as RuleSetId[]) {
    const past = /combined|turn-of-nut|dti|hrc|twist-off/.test(rule);
    if (past) expect(howInspected(rule).torqueProves).toBe(false);
  }
  expect(howInspected('en1090-torque').window).toEqual({ from: 12, until: 72 });
  expect(howInspected('flange-bolt-stress').window!.from).toBe(4);
});

describe('when', () => {
  const torque = howInspected('en1090-torque');
  const finished = Date.parse('2026-03-28T20:00:00+01:00');
  const state = (at: string) => {
    const found = inspectionTime(torque, finished, Date.parse(at));
    return found.ok ? [found.value.state, ...found.value.notices.map(({ code }) => code)] : [];
  };
  /** EN 1090-2:2018 12.5.2.4: 12 h to 72 h. The clocks go forward in the night between: the hours are hours, not what clocks show. */
  test('twelve to seventy-two hours, through the change of the clock and from another zone', () => {
    expect(state('2026-03-29T08:59:00+02:00')).toEqual(['too early', 'inspection-too-early']);
    expect(state('2026-03-29T09:00:00+02:00')).toEqual(['now']);
    expect(state('2026-03-29T07:00:00Z')).toEqual(['now']);
    expect(state('2026-03-31T21:00:00+02:00')).toEqual(['now']);
    expect(state('2026-03-31T21:01:00+02:00')).toEqual(['too late', 'inspection-too-late']);
  });
  test('marks may be looked at at once; a time that is none is refused', () => {
    const marks = inspectionTime(howInspected('en1090-combined'), finished, finished);
    expect(marks.ok && marks.value.state).toBe('now');
    expect(inspectionTime(torque, Number.NaN, finished).ok).toBe(false);
  });
  /** Gasketed flanges are tried again after four hours at least, before pressure. ASME PCC-1:2013 section 11 (from memory). */
  test('no pressure before the re-check of a gasketed flange', () => {
    const flange = howInspected('flange-bolt-stress');
    const codes = (rechecked?: number) =>
      beforePressure({ joint: 'F1', finished: 0, ...(rechecked === undefined ? {} : { rechecked }) }, flange).map(({ code }) => code);
    expect(codes()).toEqual(['recheck-open']);
    expect(codes(3.9 * 3_600_000)).toEqual(['recheck-too-early']);
    expect(codes(4 * 3_600_000)).toEqual([]);
  });
});

describe('the record of an inspection', () => {
  const sample = drawSample(
    [
      { tag: 'A', bolts: 40 },
      { tag: 'B', bolts: 24 },
    ],
    7,
    7,
  );
  if (!sample.ok) throw new Error('refused');
  const drawn = sample.value;
  const all = drawn.joints.flatMap(({ tag, bolts }) => bolts.map((bolt) => ({ joint: tag, bolt, conforms: true })));
  const record = (change: Partial<Parameters<typeof inspectionRecord>[0]> = {}) =>
    inspectionRecord({
      drawn,
      population: 64,
      inspection: howInspected('en1090-torque'),
      looked: all,
      wrench: 'SK-I02',
      tightenedWith: ['SK-H040'],
      ...change,
    });
  const refusals = (change: Partial<Parameters<typeof inspectionRecord>[0]>) => {
    const found = record(change);
    return found.ok ? [] : found.notices.map(({ code }) => code);
  };
  test('accepts when all conform, rejects by one that does not, is not finished while one is open', () => {
    expect(record()).toMatchObject({ value: { verdict: 'accepted', sample: 7, seed: 7, conforming: 7, nonconforming: [], open: [] } });
    const bad = all.map((one, at) => (at === 3 ? { ...one, conforms: false } : one));
    expect(record({ looked: bad })).toMatchObject({ value: { verdict: 'rejected', conforming: 6 } });
    const open = record({ looked: all.slice(1) });
    expect(open).toMatchObject({ value: { verdict: 'not finished', open: [{ joint: all[0]!.joint, bolt: all[0]!.bolt }] } });
  });
  test('a bolt twice, a bolt that was not drawn, and a wrench that tightened are refused together', () => {
    const looked = [...all, all[0]!, { joint: 'C', bolt: 1, conforms: true }];
    expect(refusals({ looked, wrench: 'SK-H040' })).toEqual(['inspected-not-drawn', 'inspected-twice', 'inspected-with-own-tool']);
  });
  test('bolts turned past yield by method are never tried with a torque wrench', () => {
    expect(refusals({ inspection: howInspected('en1090-combined') })).toEqual(['torque-proves-nothing']);
  });
});
