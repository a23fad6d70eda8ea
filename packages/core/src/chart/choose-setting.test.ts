import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CivilDate } from '../date.ts';
import { kN, mm, N, Nm } from '../quantity.ts';
import { chooseSetting, type SettingWish } from './choose-setting.ts';
import type { SettingChart } from './setting-chart.ts';

const SEED = { seed: 20_261_125, numRuns: 200 };

const chartOf = (torques: readonly number[], more: Partial<SettingChart> = {}): SettingChart => ({
  scales: [{ name: 'gear' }, { name: 'step' }],
  settings: torques.map((torque, i) => ({ labels: ['1', String(i + 1)], torque: Nm(torque) })),
  repeatability: 0.04,
  interpolation: false,
  certificate: {
    number: 'C-1',
    serial: 'T1',
    calibrated: '2026-01-01' as CivilDate,
    due: '2027-01-01' as CivilDate,
    uncertainty: 0.01,
  },
  ...more,
});
/** M24 at k = 0.13: 3.12 mm of torque arm. */
const wish = (wanted: number, more: Partial<SettingWish> = {}): SettingWish => ({
  wanted: Nm(wanted),
  low: Nm(0.95 * wanted),
  high: Nm(1.05 * wanted),
  arm: mm(3.12),
  target: N(Nm(wanted) / 3.12),
  ceiling: null,
  aboveCounts: true,
  frictionVariation: 0.06,
  ...more,
});

/** Expected loss by plain summation over the normal distribution: another way than the closed form. */
function lossBySum(torque: number, { arm, target, ceiling, aboveCounts, frictionVariation }: SettingWish): number {
  const mean = torque / arm;
  const spread = mean * Math.sqrt(0.02 ** 2 + 0.005 ** 2 + frictionVariation ** 2);
  let loss = 0;
  const width = 0.005;
  for (let z = -8; z < 8; z += width) {
    const force = mean + (z + width / 2) * spread;
    const weight = (Math.exp(-((z + width / 2) ** 2) / 2) / Math.sqrt(2 * Math.PI)) * width;
    loss += weight * Math.max(0, target - force);
    if (aboveCounts) loss += weight * Math.max(0, force - target);
    if (ceiling !== null) loss += weight * 3 * Math.max(0, force - ceiling);
  }
  return loss / target;
}

/** Torques that rise by 0.5 to 5 % a step, N·m. */
const rising = fc
  .tuple(fc.double({ min: 450, max: 650, noNaN: true }), fc.array(fc.double({ min: 1.005, max: 1.05, noNaN: true }), { maxLength: 30 }))
  .map(([lowest, ratios]) => {
    const torques = [lowest];
    for (const ratio of ratios) torques.push(torques.at(-1)! * ratio);
    return torques;
  });

test('no other measured setting in the window has a smaller expected loss than the one chosen', () => {
  let seen = 0;
  fc.assert(
    fc.property(rising, fc.boolean(), fc.option(fc.double({ min: 0.95, max: 1.3, noNaN: true })), (torques, aboveCounts, share) => {
      const asked = wish(600, { aboveCounts, ceiling: share === null ? null : N((share * Nm(600)) / 3.12) });
      const found = chooseSetting(chartOf(torques), asked);
      const inside = torques.map(Nm).filter((torque) => torque >= asked.low && torque <= asked.high);
      expect(found.ok).toBe(inside.length > 0);
      if (!found.ok) return;
      seen += 1;
      const { torque, loss } = found.value.best;
      expect(inside).toContain(torque);
      expect(loss).toBeCloseTo(lossBySum(torque, asked), 5);
      for (const other of inside) expect(lossBySum(other, asked)).toBeGreaterThan(loss - 1e-5);
    }),
    SEED,
  );
  expect(seen).toBeGreaterThan(50);
});

test('a target that is the least a bolt may have is met by a higher setting than one that is an aim', () => {
  const chart = chartOf([580, 590, 600, 610, 620]);
  const aim = chooseSetting(chart, wish(600));
  const least = chooseSetting(chart, wish(600, { aboveCounts: false }));
  if (!aim.ok || !least.ok) throw new Error('no setting');
  expect(least.value.best.torque).toBeGreaterThan(aim.value.best.torque);
  expect(least.value.best.torque).toBe(Nm(620));
});

test('the ends of the window belong to it', () => {
  for (const torque of [570, 630]) {
    const found = chooseSetting(chartOf([torque]), { ...wish(600), low: Nm(570), high: Nm(630) });
    expect(found.ok).toBe(true);
  }
});

test('the interval holds nine bolts in ten: 1.645 deviations of tool, certificate and friction together', () => {
  const found = chooseSetting(chartOf([600]), wish(600));
  if (!found.ok) throw new Error('no setting');
  const { preload, preloadLow, preloadHigh } = found.value.best;
  const variation = Math.hypot(0.02, 0.005, 0.06);
  expect(preload).toBeCloseTo(kN(600 / 3.12), 6);
  expect((preloadHigh - preloadLow) / (2 * preload)).toBeCloseTo(1.645 * variation, 4);
});

test('a measured deviation of a setting takes the place of the stated repeatability', () => {
  const settings = [{ labels: ['1', '1'], torque: Nm(600), deviation: 0.012 }];
  const found = chooseSetting(chartOf([], { settings }), wish(600, { frictionVariation: 0 }));
  if (!found.ok) throw new Error('no setting');
  expect(found.value.best.preloadHigh / found.value.best.preload - 1).toBeCloseTo(1.645 * Math.hypot(0.012, 0.005), 4);
});

test('a setting for loosening only is never offered, however well it fits', () => {
  const settings = [{ labels: ['1', '1'], torque: Nm(600), looseningOnly: true }];
  const found = chooseSetting(chartOf([], { settings }), wish(600));
  expect(found.ok ? [] : found.notices.map(({ code }) => code)).toEqual(['chart-empty']);
});

test.each([
  ['tool-too-small', [100, 200]],
  ['tool-too-large', [900, 1000]],
  ['chart-too-coarse', [500, 900]],
])('where nothing fits the reason is %s', (code, torques) => {
  const found = chooseSetting(chartOf(torques), wish(600));
  expect(found.ok ? [] : found.notices.map((one) => one.code)).toEqual([code]);
});

test('between two measured settings a third is offered only where the chart’s owner allows it, marked, and never outside them', () => {
  expect(chooseSetting(chartOf([500, 700]), wish(600)).ok).toBe(false);
  const found = chooseSetting(chartOf([500, 700], { interpolation: true }), wish(600));
  if (!found.ok) throw new Error('no setting');
  expect(found.value.best).toMatchObject({ interpolated: true, torque: Nm(600), labels: ['1', '1.5'] });
  expect(chooseSetting(chartOf([300, 400], { interpolation: true }), wish(600)).ok).toBe(false);
  const measured = chooseSetting(chartOf([500, 590, 700], { interpolation: true }), wish(600));
  expect(measured.ok && measured.value.best.interpolated).toBe(false);
});

test('pressures written with a decimal comma are interpolated as numbers', () => {
  const settings = ['2,0', '2,5'].map((label, i) => ({ labels: [label], torque: Nm(500 + 200 * i) }));
  const found = chooseSetting(chartOf([], { settings, scales: [{ name: 'air pressure', unit: 'bar' }], interpolation: true }), wish(600));
  expect(found.ok && found.value.best.text).toBe('air pressure 2.25 bar');
});
