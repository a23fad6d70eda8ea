import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../outcome.ts';
import { degrees, Nm } from '../quantity.ts';
import { philox } from '../random/philox.ts';
import { type Battery, coldShare, usableEnergy } from './battery.ts';
import { batteryNotices } from './battery-notices.ts';
import { learnt, learntFromDrop } from './learn.ts';
import { drawLine, nextChargeBound } from './log-statistics.ts';
import { supplyNotices } from './other-supplies.ts';
import { canPush, pushes, transferablePower, voltageSag } from './push.ts';
import { boltBounds, boltsPerCharge, boltsRemaining, chanceItLasts, energyBehind, pullsLasting } from './remaining.ts';
import { roadChargingNotices, socketCurrent, socketPower } from './road-charging.ts';
import { type Pull, sharePulls } from './share-pulls.ts';
import { beforeNextBolt } from './supply.ts';
import { drawPerBolt, tighteningWork } from './work.ts';

const RUNS = { seed: 20261127, numRuns: 300 };
const battery: Battery = { serial: 'SK-P1', volts: 18, ampereHours: 5, health: 1, temperature: 25, lit: 4 };
const granted = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error('refused');
  return outcome.value;
};
const refusals = (outcome: Outcome<unknown>) => (outcome.ok ? [] : outcome.notices.map(({ code }) => code));
const energyOf = (change: Partial<Battery> = {}) => granted(usableEnergy({ ...battery, ...change }));
const codes = (change: Partial<Battery>) => refusals(usableEnergy({ ...battery, ...change }));

/** reference/practice §4.3: M24 10.9, 800 N·m, 90 Wh: 60° ramp 216 bolts, 90° 149; at −10 °C and aged 101; good efficiency 389. */
describe('worked example M24, 90 Wh', () => {
  const work = (ramp: number) => tighteningWork({ from: Nm(0), to: Nm(800), ramp: degrees(ramp), freeTurns: 0, running: Nm(0) });
  const usual = { efficiency: 0.35, overhead: 150 };
  test('whole bolts of a charge', () => {
    expect(boltsPerCharge(energyOf(), drawPerBolt(work(60), usual))).toBe(216);
    expect(boltsPerCharge(energyOf(), drawPerBolt(work(90), usual))).toBe(149);
    expect(boltsPerCharge(energyOf(), drawPerBolt(work(60), { efficiency: 0.6, overhead: 50 }))).toBe(389);
  });
  test('cold and age take a third', () => {
    expect(boltsPerCharge(energyOf({ temperature: -10, health: 0.9 }), drawPerBolt(work(90), usual))).toBe(101);
  });
  test('the first drop of the gauge narrows the band: 38 bolts are 1918 J each, 152 of a charge', () => {
    expect(boltsPerCharge(energyOf(), energyOf() / 4 / 38)).toBe(152);
  });
});

/** Power at matched load, V²/4R: the reference rows BA-061 and BA-062; a tool's cut-off leaves less. */
test('the power a battery can give', () => {
  expect(transferablePower(18, (0.015 * 5) / 2, 0)).toBeCloseTo(2160, 6);
  expect(transferablePower(18, (0.03205 * 5) / 2, 0)).toBeCloseTo(1010.92, 2);
  for (let cutOff = 9; cutOff < 18; cutOff += 1) {
    expect(transferablePower(18, 0.04, cutOff + 1)).toBeLessThan(transferablePower(18, 0.04, cutOff));
  }
});

/** Sag of 5s2p at 30 A, 37 mΩ and 130 mΩ a cell (reference/practice §4.2): the cold battery stops at peak torque with charge left. */
test('a battery may be too weak for the peak although it is not empty', () => {
  const at = (cell: number) => canPush({ open: 20, cutOff: 12.5, sag: voltageSag(cell, 5, 2, 30) });
  expect(at(0.0373)).toBe(true);
  expect(at(0.1299)).toBe(false);
});

describe('what the gauge says', () => {
  /** Gauges read in quarters. Common practice, no source. */
  test('one lit segment guarantees nothing', () => {
    expect(granted(boltBounds(291_600, 1, 1400, 2000)).guaranteed).toBe(0);
    expect(granted(boltsRemaining(291_600, 1, { mean: 1900, meanDeviation: 100, boltDeviation: 150 })).sure).toBeLessThan(5);
  });
  test('the distribution lies between the bounds and falls', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 800, max: 4000 }), (lit, mean) => {
        const left = granted(boltsRemaining(291_600, lit, { mean, meanDeviation: 0.05 * mean, boltDeviation: 0.08 * mean }));
        expect(left.sure).toBeLessThanOrEqual(left.median);
        expect(left.median).toBeLessThanOrEqual(left.hopeful);
        for (let n = 1; n < left.chance.length; n += 1) expect(left.chance[n]!).toBeLessThanOrEqual(left.chance[n - 1]! + 1e-12);
        const { guaranteed, best } = granted(boltBounds(291_600, lit, 0.7 * mean, 1.4 * mean));
        expect(left.sure).toBeGreaterThanOrEqual(guaranteed - 1);
        expect(left.hopeful).toBeLessThanOrEqual(best + 1);
      }),
      RUNS,
    );
  });
  test('bolts taken as independent would be badly over-confident', () => {
    const honest = chanceItLasts(145_800, 70, { mean: 1960, meanDeviation: 100, boltDeviation: 150 });
    const blind = chanceItLasts(145_800, 70, { mean: 1960, meanDeviation: 0, boltDeviation: 150 });
    expect(blind - honest).toBeGreaterThan(0.1);
  });
});

describe('sharing pulls among the batteries at hand', () => {
  const FULL = 291_600;
  const belief = { mean: 1960, meanDeviation: 100, boltDeviation: 150 };
  const pulls = (count: number, weight = 1): Pull[] =>
    Array.from({ length: count }, (_, i) => ({ joint: i < 48 ? 'J1' : 'J2', bolt: i + 1, step: 'second step', weight }));
  const atHand = [
    { serial: 'half', ...energyBehind(FULL, 3), full: FULL },
    { serial: 'charged', low: FULL, high: FULL, full: FULL },
  ];
  test('the chances agree with batteries and bolts drawn one by one', () => {
    // another way to the same distribution: charge, mean draw and every bolt drawn
    const weights = Array.from({ length: 120 }, (_, i) => (i % 3 === 0 ? 1.6 : 0.8));
    const chances = pullsLasting(energyBehind(FULL, 3), belief, weights);
    const runs = 20_000;
    const counts = new Float64Array(weights.length);
    const words = new Uint32Array(4);
    const unit = (at: number) => (words[at]! + 0.5) / 2 ** 32;
    const normal = (a: number, b: number) => Math.sqrt(-2 * Math.log(unit(a))) * Math.cos(2 * Math.PI * unit(b));
    for (let run = 0; run < runs; run += 1) {
      philox(run, 0, 0, 0, 7, 0, words);
      let left = (0.5 + 0.25 * unit(0)) * FULL;
      const mean = 1960 + 100 * normal(1, 2);
      for (let bolt = 0; bolt < weights.length; bolt += 1) {
        philox(run, bolt + 1, 0, 0, 7, 0, words);
        left -= weights[bolt]! * mean + weights[bolt]! * 150 * normal(0, 1);
        if (left < 0) break;
        counts[bolt]! += 1;
      }
    }
    for (const [bolt, count] of counts.entries()) {
      expect(Math.abs(count / runs - (chances[bolt] ?? 0))).toBeLessThan(5 * Math.sqrt(0.25 / runs));
    }
  });
  test('every pull is covered once or listed as uncovered; the fullest battery goes first', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (count) => {
        const shared = sharePulls(pulls(count), atHand, belief, 5);
        if (!shared.ok) throw new Error('refused');
        const { turns, uncovered, more } = shared.value;
        expect([...turns.flatMap((turn) => turn.pulls), ...uncovered]).toEqual(pulls(count));
        expect(turns[0]?.serial).toBe('charged');
        for (const { chance } of turns) expect(chance).toBeGreaterThanOrEqual(0.9);
        expect(more === 0).toBe(uncovered.length === 0);
      }),
      RUNS,
    );
  });
  test('what is not covered is not begun, and what rests on assumptions says so', () => {
    const shared = sharePulls(pulls(400), atHand, belief, 0);
    expect(shared.ok && shared.value.notices.map(({ code }) => code)).toEqual(['batteries-too-few', 'joint-not-covered', 'draw-assumed']);
    expect(shared.ok && shared.value.notToBegin).toEqual(['J2']);
  });
  test('a bolt that no battery does ends in a stop, not in a loop', () => {
    const shared = sharePulls(pulls(1, 500), atHand, belief, 5);
    expect(shared.ok && shared.value.notices.map(({ code }) => code)).toEqual(['batteries-too-weak', 'joint-not-covered']);
  });
  test('batteries without an energy and pulls without a draw are refused together', () => {
    const shared = sharePulls(pulls(2, 0), [{ serial: 'P', low: 0, high: 0, full: 0 }], belief, 5);
    expect(refusals(shared)).toEqual(['battery-rating', 'pull-without-draw', 'pull-without-draw']);
  });
});

/** A battery can be too low for the set torque although it is not empty; cold makes it worse. Common practice, no source. */
test('what a battery cannot push is refused before the bolt', () => {
  const half = { serial: 'P', cells: { series: 5, parallel: 2, resistance: 0.03 }, charge: 0.25, temperature: 25 };
  const tool = { amperesPerTorque: 50 / Nm(1000), cutOff: 13 };
  expect(pushes(half, tool, Nm(800)).ok).toBe(true);
  const cold = pushes({ ...half, temperature: -10 }, tool, Nm(800));
  expect(refusals(cold)).toEqual(['battery-cannot-push']);
});

describe('learning', () => {
  test('two observations move the belief, and a hundred settle it', () => {
    const prior = { mean: 1700, deviation: 300 };
    const few = learnt(prior, [2000, 2000], 150);
    const many = learnt(prior, new Array<number>(100).fill(2000), 150);
    expect(few.mean).toBeLessThan(many.mean);
    expect(few.deviation).toBeGreaterThan(5 * many.deviation);
    expect(learnt(prior, [], 150)).toEqual(prior);
  });
  test('a drop of the gauge narrows the belief, and one observation at a time comes to the same as all at once', () => {
    const band = { mean: 2000, meanDeviation: 470, boltDeviation: 200 };
    const after = learntFromDrop(band, 291_600, 38);
    expect(after.ok && after.value.meanDeviation).toBeLessThan(band.meanDeviation / 3);
    const stepwise = [1918, 2083, 1990].reduce((held, one) => learnt(held, [one], 150), { mean: 1700, deviation: 300 });
    const atOnce = learnt({ mean: 1700, deviation: 300 }, [1918, 2083, 1990], 150);
    expect(stepwise.mean).toBeCloseTo(atOnce.mean, 9);
    expect(stepwise.deviation).toBeCloseTo(atOnce.deviation, 9);
  });
  test('logs too short to learn from, and impossible counts, are refused', () => {
    expect(refusals(nextChargeBound([142, 138], 0.95))).toEqual(['log-too-short']);
    expect(refusals(drawLine([1, 2], [3, 4]))).toEqual(['log-too-short']);
    expect(refusals(drawLine([1, 2, 3], [3, 4]))).toEqual(['log-too-short']);
    expect(refusals(drawLine([1, 1, 1], [3, 4, 5]))).toEqual(['works-all-alike']);
    for (const bolts of [0, -3, 2.5, Number.NaN]) {
      expect(refusals(learntFromDrop({ mean: 1, meanDeviation: 1, boltDeviation: 1 }, 291_600, bolts))).toEqual(['drop-count']);
    }
  });
  /** Slope of five jobs and its bounds: SciPy linregress and t.ppf(0.95, 3). */
  test('few jobs leave wide bounds on the efficiency, and say so', () => {
    const { slope, slopeBounds } = granted(drawLine([320, 420, 540, 630, 780], [1010, 1260, 1650, 1890, 2330]));
    expect(slope).toBeCloseTo(2.89679, 4);
    expect(slopeBounds.low).toBeCloseTo(2.76816, 4);
    expect(slopeBounds.high).toBeCloseTo(3.02542, 4);
    expect(granted(drawLine([300, 310, 320], [900, 1000, 880])).slopeBounds.low).toBeLessThan(0);
  });
  test('a log gives back the efficiency and overhead it was made with', () => {
    const work = [300, 500, 800];
    const line = drawLine(
      work,
      work.map((one) => one / 0.4 + 120),
    );
    const { slope, intercept } = granted(line);
    expect(1 / slope).toBeCloseTo(0.4, 9);
    expect(intercept).toBeCloseTo(120, 6);
  });
});

/** Torque step: warn, change, finish that bolt; angle step: do not start the bolt. The rule of the issue; common practice, no source. */
test('the stop rule goes by how the step ends', () => {
  expect(beforeNextBolt(0, 'torque')).toBe('change and finish');
  expect(beforeNextBolt(0, 'angle')).toBe('do not start');
  expect(beforeNextBolt(1, 'angle')).toBe('go on');
});

describe('charging on the road', () => {
  test('a 6 A charger through an inverter blows a fuse of 10 A and sits at the line of 15 A', () => {
    const current = socketCurrent({
      chargeCurrent: 6,
      batteryVolts: 18,
      chargerEfficiency: 0.85,
      inverterEfficiency: 0.88,
      vehicleVolts: 12,
    });
    expect(current * 12).toBeGreaterThan(socketPower(10, 12, 1));
    expect(current * 12).toBeLessThan(1.01 * socketPower(15));
  });
  test('a battery from frost is not charged, a new one is charged first, one segment is said', () => {
    const of = (change: object) =>
      batteryNotices({ serial: 'P', temperature: 20, lit: 3, charging: false, ...change }).map(({ code }) => code);
    expect(of({})).toEqual([]);
    expect(of({ temperature: -5, charging: true })).toEqual(['battery-no-charging']);
    expect(of({ temperature: -25 })).toEqual(['battery-no-working']);
    expect(of({ neverCharged: true })).toEqual(['battery-first-charge']);
    expect(of({ lit: 1 })).toEqual(['battery-low']);
  });
});

test('other supplies have checks of their own', () => {
  const of = (supply: Parameters<typeof supplyNotices>[1]) => supplyNotices('T', supply).map(({ code }) => code);
  expect(of({ kind: 'mains', volts: 200, wantedVolts: 230, fuse: 10, wantedCurrent: 12, protected: false })).toEqual([
    'supply-weak',
    'supply-weak',
    'supply-unprotected',
  ]);
  expect(of({ kind: 'mains', volts: 228, wantedVolts: 230, fuse: 16, wantedCurrent: 10, protected: true })).toEqual([]);
  expect(of({ kind: 'air', bar: 5.5, wantedBar: 6.3, oiled: false })).toEqual(['supply-weak', 'supply-dry-air']);
  expect(of({ kind: 'air', bar: 6.5, wantedBar: 6.3, oiled: true, hoseChanged: true })).toEqual(['supply-hose-changed']);
  expect(of({ kind: 'hydraulic', pumpBar: 700, wantedBar: 440, hoseRating: 400 })).toEqual(['supply-hose']);
  // the pump's greatest pressure reaches the hose whatever the setting
  expect(of({ kind: 'hydraulic', pumpBar: 700, wantedBar: 440, hoseRating: 500 })).toEqual(['supply-hose']);
  expect(of({ kind: 'hydraulic', pumpBar: 700, wantedBar: 440, hoseRating: 700 })).toEqual([]);
});

describe('bad input', () => {
  test.each<[string, Partial<Battery>, string]>([
    ['unknown rating', { volts: Number.NaN }, 'battery-rating'],
    ['negative charge', { lit: -1 as never }, 'battery-gauge'],
    ['a gauge above full', { lit: 5 as never }, 'battery-gauge'],
    ['health above one', { health: 1.2 }, 'battery-health'],
    ['absurd temperature', { temperature: 300 }, 'battery-temperature'],
  ])('%s', (_, change, code) => expect(codes(change)).toEqual([code]));
  test('all at once', () =>
    expect(codes({ volts: 0, health: 0, lit: 2.5 as never })).toEqual(['battery-rating', 'battery-health', 'battery-gauge']));
  test('a charge, cells, a draw or an energy that cannot be', () => {
    const cells = { series: 5, parallel: 2, resistance: 0.03 };
    const tool = { amperesPerTorque: 50 / Nm(1000), cutOff: 13 };
    const half = { serial: 'P', cells, charge: 0.5, temperature: 20 };
    expect(refusals(pushes({ ...half, charge: -0.1, cells: { ...cells, resistance: 0 } }, tool, Nm(800)))).toEqual([
      'battery-charge',
      'battery-cells',
    ]);
    expect(refusals(pushes({ ...half, charge: 1.01 }, tool, Nm(800)))).toEqual(['battery-charge']);
    expect(refusals(pushes({ ...half, temperature: -25 }, tool, Nm(800)))).toEqual(['battery-no-working']);
    const belief = { mean: 0, meanDeviation: 100, boltDeviation: 150 };
    expect(refusals(boltsRemaining(0, 5, belief))).toEqual(['energy-impossible', 'gauge-reading', 'draw-impossible']);
    expect(refusals(boltBounds(291_600, -1, 2000, 1400))).toEqual(['gauge-reading', 'draw-impossible']);
    expect(refusals(learntFromDrop(belief, 291_600, 0))).toEqual(['drop-count', 'draw-impossible']);
    expect(refusals(sharePulls([], [{ serial: 'P', low: -1, high: 5, full: 10 }], belief, 5))).toEqual([
      'battery-charge',
      'draw-impossible',
    ]);
  });
  test('logs with readings below zero', () => {
    expect(refusals(nextChargeBound([140, -2, 138], 0.95))).toEqual(['log-impossible']);
    expect(refusals(nextChargeBound([140, 142, 138], 1.2))).toEqual(['log-impossible']);
    expect(refusals(drawLine([1, 2, Number.NaN], [3, 4, 5]))).toEqual(['log-impossible']);
  });
  test('what cannot be read is never a yes', () => {
    const codesOf = (of: object) => batteryNotices({ serial: 'P', temperature: 20, lit: 4, charging: true, ...of }).map(({ code }) => code);
    expect(codesOf({ temperature: Number.NaN })).toEqual(['battery-temperature']);
    expect(codesOf({ lit: 5 })).toEqual(['battery-gauge']);
    expect(roadChargingNotices(Number.NaN, 10).map(({ code }) => code)).toEqual(['socket-reading']);
    expect(roadChargingNotices(5, 0).map(({ code }) => code)).toEqual(['socket-reading']);
    const air = { kind: 'air', bar: Number.NaN, wantedBar: 6.3, oiled: true } as const;
    expect(supplyNotices('T', air).map(({ code }) => code)).toEqual(['supply-reading']);
  });
  test('nothing is planned with a battery outside its window', () => {
    expect(codes({ temperature: -21 })).toEqual(['battery-no-working']);
    expect(codes({ temperature: 61 })).toEqual(['battery-no-working']);
  });
  /** Cells measured in the cold: reference rows BA-033 to BA-043, published. */
  test.each([
    [10, 0.868],
    [0, 0.798],
    [-10, 0.759],
    [-15, 0.713],
    [-20, 0.635],
  ])('at %i °C a plan counts on no more than the weakest measured cell, and not on much less', (celsius, weakest) => {
    expect(coldShare(celsius)).toBeLessThan(weakest + 0.003);
    expect(coldShare(celsius)).toBeGreaterThan(weakest - 0.05);
  });
  test('cold shares rise with temperature and end at one', () => {
    for (let celsius = -40; celsius < 40; celsius += 1) expect(coldShare(celsius + 1)).toBeGreaterThanOrEqual(coldShare(celsius));
    expect(coldShare(30)).toBe(1);
  });
});
