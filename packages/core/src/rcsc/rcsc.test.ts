import { describe, expect, test } from 'vitest';
import { inchThread } from '../fasteners/inch-threads.ts';
import { nominalStressArea } from '../fasteners/thread.ts';
import { degrees, inch, inDegrees, inKip, inLbf, kip, ksi, mm } from '../quantity.ts';
import { directTensionIndicator } from './dti.ts';
import { MINIMUM_PRETENSION, minimumPretension, pretensionOf } from './minimum-pretension.ts';
import { greatestShortBoltTorque, initialTestTension, turnTestTension } from './rotational-capacity.ts';
import { nutRotation, rotationTolerance } from './turn-of-nut.ts';
import { leastTwistOffTension } from './twist-off.ts';
import { verificationTension } from './verification-tension.ts';

const area = (diameter: number) => nominalStressArea(inchThread(mm(diameter), 'UNC')!);
const kips = (force: number) => Math.round(inKip(force as never));

describe('minimum pretension', () => {
  // RCSC 2014 Table 8.1 and 2020 Table 5.2: T_m = 0.70 S_ut A_t, nearest kip, S_ut of the edition
  test.each(MINIMUM_PRETENSION.inch)('at $diameter mm all three columns are 0.70 S_ut A_t to the nearest kip', (row) => {
    const older = row.diameter > inch(1) + 1e-6 ? 105 : 120;
    expect(kips(row.older120)).toBe(kips(pretensionOf(ksi(older), area(row.diameter))));
    expect(kips(row.newer120)).toBe(kips(pretensionOf(ksi(120), area(row.diameter))));
    expect(kips(row.group150)).toBe(kips(pretensionOf(ksi(150), area(row.diameter))));
  });
  test('the metric table is 0.70 S_ut A_s within 0.5 % (ISO 898-1 areas)', () => {
    const areas: Record<number, number> = { 16: 157, 20: 245, 22: 303, 24: 353, 27: 459, 30: 561, 36: 817 };
    for (const { diameter, group120, group150 } of MINIMUM_PRETENSION.metric) {
      expect(Math.abs(group120 / (0.7 * 830 * areas[diameter]!) - 1)).toBeLessThan(0.005);
      expect(Math.abs(group150 / (0.7 * 1040 * areas[diameter]!) - 1)).toBeLessThan(0.005);
    }
  });
  test('a bolt made to A325-14 keeps its lower pretension under the newest edition', () => {
    const found = minimumPretension('A325-14', inch(1.25), '2020');
    expect(found.ok && kips(found.value.value)).toBe(71);
  });
  test('refuses B7, which is no structural bolt, and a size the table ends before', () => {
    expect(minimumPretension('A193 B7', inch(1), '2014')).toMatchObject({ ok: false, notices: [{ code: 'grade-not-preloadable' }] });
    expect(minimumPretension('F3125 A490', inch(1.75), '2014')).toMatchObject({ ok: false, notices: [{ code: 'size-not-in-table' }] });
  });
});

describe('what follows from the minimum pretension', () => {
  // RCSC 2014 Table 7.1 (from memory)
  test('verification tensions are those of Table 7.1', () => {
    expect(MINIMUM_PRETENSION.inch.map(({ older120 }) => kips(verificationTension(older120)))).toEqual([
      13, 20, 29, 41, 54, 59, 75, 89, 108,
    ]);
    expect(MINIMUM_PRETENSION.inch.map(({ group150 }) => kips(verificationTension(group150)))).toEqual([
      16, 25, 37, 51, 67, 84, 107, 127, 155,
    ]);
  });
  // ASTM F959-09 Table 3: from T_m to 1.2 T_m
  test.each(MINIMUM_PRETENSION.inch)('the indicator at $diameter mm covers T_m to 1.2 T_m', ({ diameter, older120, group150 }) => {
    for (const [type, least] of [
      ['325', older120],
      ['490', group150],
    ] as const) {
      const found = directTensionIndicator(type, diameter);
      expect(found.ok && [kips(found.value.low), kips(found.value.high)]).toEqual([kips(least), Math.round(1.2 * inKip(least))]);
    }
  });
  // ASTM F3125-15: printed to 50 lbf
  test.each(MINIMUM_PRETENSION.inch.filter(({ diameter }) => diameter <= inch(1.25)))(
    'a twist-off assembly at $diameter mm must show 1.05·0.70·S_ut·A_t within 0.3 %',
    ({ diameter }) => {
      for (const [grade, tensile] of [
        ['F1852', 120],
        ['F2280', 150],
      ] as const) {
        const found = leastTwistOffTension(grade, diameter);
        expect(found.ok && inLbf(found.value.value) / (inLbf((1.05 * 0.7 * ksi(tensile) * area(diameter)) as never) || 1)).toBeCloseTo(
          1,
          2,
        );
      }
    },
  );
  // FHWA/AASHTO rotational-capacity tables for A325
  test('the rotational-capacity test of A325 has the tabulated initial and final tensions', () => {
    expect(MINIMUM_PRETENSION.inch.map(({ older120 }) => kips(initialTestTension(older120)))).toEqual([1, 2, 3, 4, 5, 6, 7, 9, 10]);
    expect(MINIMUM_PRETENSION.inch.map(({ older120 }) => kips(turnTestTension(older120)))).toEqual([14, 22, 32, 45, 59, 64, 82, 98, 118]);
    expect(Math.round(greatestShortBoltTorque(kip(32), inch(0.75)) / 1355.8179)).toBe(500);
  });
});

describe('nutRotation()', () => {
  // RCSC 2014 Table 8.2, in turns of 1/6
  test('gives the nine cells of the table, limits with the shorter band', () => {
    const sixths = [4, 8, 12].map((ratio) =>
      ([0, 1, 2] as const).map((sloped) => {
        const found = nutRotation(mm(10), mm(10 * ratio), sloped);
        return found.ok ? Math.round(inDegrees(found.value.value) / 60) : null;
      }),
    );
    expect(sixths).toEqual([
      [2, 3, 4],
      [3, 4, 5],
      [4, 5, 6],
    ]);
  });
  test('refuses a bolt longer than twelve diameters', () => {
    expect(nutRotation(mm(20), mm(240.1), 0)).toMatchObject({ ok: false, notices: [{ code: 'rotation-not-tabulated' }] });
  });
  test('has the older, symmetric tolerance before 2009', () => {
    expect(inDegrees(rotationTolerance(degrees(180), '2004').plus)).toBeCloseTo(30, 9);
    expect(inDegrees(rotationTolerance(degrees(300), '2004').minus)).toBeCloseTo(45, 9);
  });
});
