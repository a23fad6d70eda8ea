import { describe, expect, test } from 'vitest';
import { type CivilDate, civilDate } from '../date.ts';
import { degrees, inch, kip, kN, lbfFt, mm, Nm } from '../quantity.ts';
import { type LotOnTheDay, lotNotices } from './lot-on-the-day.ts';
import { judgePreInstallation } from './pre-installation.ts';
import { type CapacityAssembly, judgeRotationalCapacity } from './rotational-capacity-test.ts';
import { judgeSuitability, type SuitabilityTest } from './suitability-test.ts';

const day = (text: string) => civilDate(text) as CivilDate;

/** M24 10.9 HV, F_p,C = 247 kN, A_s = 353 mm². Torques of the published row km 0.123 at 800 N·m/1.10 (reference/practice §3.2), spread by ours. */
const test24: SuitabilityTest = {
  lot: 'HV24-611',
  diameter: mm(24),
  preload: kN(247),
  system: 'HV',
  ultimate: 1000,
  stressArea: 353,
  ratio: 56 / 24,
  assemblies: [712, 731, 745, 722, 738].map((torque) => ({
    torque: Nm(torque),
    greatestForce: kN(330),
    firstRotation: degrees(140),
    secondRotation: degrees(260),
  })),
};
const judged = (change: Partial<SuitabilityTest> = {}) => judgeSuitability({ ...test24, ...change });
const value = (change: Partial<SuitabilityTest> = {}) => {
  const found = judged(change);
  if (!found.ok) throw new Error('refused');
  return found.value;
};

describe('suitability test', () => {
  test('k_m, V_k and class, and what the class opens', () => {
    const lot = value();
    expect(lot.mean).toBeCloseTo((712 + 731 + 745 + 722 + 738) / 5 / (24 * 247), 6);
    expect(lot).toMatchObject({ kClass: 'K2', failed: false, allows: { torqueMethod: true, combinedMethod: true }, notices: [] });
    expect(lot.friction).toMatchObject({ kind: 'nut factor', variation: lot.variation });
  });
  test('a spread above 6 % closes the torque method; k values inside K1 leave the combined one', () => {
    const wide = value({ assemblies: [600, 800, 900, 650, 850].map((torque) => ({ torque: Nm(torque) })) });
    expect(wide).toMatchObject({ kClass: 'K1', allows: { torqueMethod: false, combinedMethod: true } });
    const none = value({ assemblies: [400, 800, 1200, 650, 1100].map((torque) => ({ torque: Nm(torque) })) });
    expect(none).toMatchObject({ kClass: 'K0', allows: { torqueMethod: false, combinedMethod: false } });
    expect(none.notices.map(({ code }) => code)).toContain('lot-k-class-none');
  });
  test('a weak assembly or a short rotation fails the lot, and its means are not used', () => {
    const weak = test24.assemblies.map((one, at) => (at === 2 ? { ...one, greatestForce: kN(310) } : one));
    const short = test24.assemblies.map((one, at) => (at === 4 ? { ...one, firstRotation: degrees(100) } : one));
    for (const assemblies of [weak, short]) {
      const lot = value({ assemblies });
      expect(lot).toMatchObject({ failed: true, allows: { torqueMethod: false, combinedMethod: false } });
      expect(lot.friction).toBeUndefined();
    }
  });
  test('two points are no test, and what is no reading is named with its assembly', () => {
    const refusal = judged({ assemblies: [{ torque: Nm(700) }, { torque: Nm(-1) }] });
    expect(refusal.ok ? [] : refusal.notices.map(({ code, params }) => [code, params])).toEqual([
      ['lot-test-few', { lot: 'HV24-611', found: 2, wanted: 5 }],
      ['lot-test-reading', { lot: 'HV24-611', assembly: 2 }],
    ]);
  });
});

/** RCSC 2014 Table 8.1: 7/8 A325: 39 kip; 1.05 times is 41 kip (Table 7.1). */
describe('pre-installation verification', () => {
  const minimum = kip(39);
  test('three assemblies at 41 kip pass, and give the wrench its torque', () => {
    const found = judgePreInstallation({ lot: 'L', minimum, tensions: [kip(41), kip(42), kip(43)], torques: [Nm(600), Nm(620), Nm(610)] });
    expect(found.ok && found.value.passed).toBe(true);
    expect(found.ok && found.value.torque).toBeCloseTo(610_000, 6);
  });
  test('one below fails, two are no verification', () => {
    const low = judgePreInstallation({ lot: 'L', minimum, tensions: [kip(41), kip(40.9), kip(43)] });
    expect(low.ok && low.value.passed).toBe(false);
    expect(judgePreInstallation({ lot: 'L', minimum, tensions: [kip(41), kip(42)] }).ok).toBe(false);
  });
});

describe('a lot on the day', () => {
  const good: LotOnTheDay = { lot: 'L', tested: day('2026-10-01'), workDate: day('2026-11-25'), wetSinceTest: false, relubricated: false };
  const codes = (change: Partial<LotOnTheDay>) => lotNotices({ ...good, ...change }).map(({ code }) => code);
  test('dry, young and at like temperature: nothing is said', () => expect(codes({ testTemperature: 15, boltTemperature: 3 })).toEqual([]));
  test.each<[string, Partial<LotOnTheDay>, string]>([
    ['wet', { wetSinceTest: true }, 'lot-retest'],
    ['lubricated again', { relubricated: true }, 'lot-retest'],
    ['a year old', { tested: day('2025-10-01') }, 'lot-test-old'],
    ['tested tomorrow', { tested: day('2026-11-26') }, 'lot-test-future'],
    ['far colder', { testTemperature: 20, boltTemperature: -12 }, 'lot-test-temperature'],
  ])('%s', (_, change, code) => expect(codes(change)).toEqual([code]));
});

/** FHWA/AASHTO rotational-capacity test, 7/8 A325: T ≤ 0.25·P·D = 729 lbf·ft at 40 kip, 45 kip left after the turn; short bolts 820 lbf·ft. */
describe('rotational capacity', () => {
  const good: CapacityAssembly = { torque: lbfFt(560), tension: kip(40), tensionAfterTurn: kip(46), damaged: false };
  const judged7 = (...assemblies: CapacityAssembly[]) => {
    const found = judgeRotationalCapacity({ lot: 'B1/N1/W1', minimum: kip(39), diameter: inch(7 / 8), assemblies });
    return found.ok ? [found.value.passed, ...found.value.notices.map(({ code }) => code)] : found.notices.map(({ code }) => code);
  };
  test('two sound assemblies pass, at the limits too', () => {
    expect(judged7(good, { ...good, torque: lbfFt(729), tensionAfterTurn: kip(45) })).toEqual([true]);
  });
  test('one failure of any kind rejects the combination', () => {
    expect(judged7(good, { ...good, torque: lbfFt(735) })).toEqual([false, 'lot-torque-high']);
    expect(judged7(good, { ...good, tensionAfterTurn: kip(44) })).toEqual([false, 'lot-force-low']);
    expect(judged7(good, { ...good, damaged: true })).toEqual([false, 'lot-damaged']);
    expect(judged7(good, { torque: lbfFt(560), tension: kip(40), damaged: false })).toEqual([false, 'lot-force-low']);
  });
  test('bolts too short for the calibrator are judged by torque', () => {
    const short = (torque: number): CapacityAssembly => ({ torque: lbfFt(torque), damaged: false });
    expect(judged7(short(800), short(820))).toEqual([true]);
    expect(judged7(short(800), short(830))).toEqual([false, 'lot-torque-high']);
  });
  test('one assembly is no test, and readings that are none are refused', () => {
    expect(judged7({ ...good, torque: lbfFt(0) })).toEqual(['lot-test-few', 'lot-test-reading']);
  });
});
