import { expect, test } from 'vitest';
import type { CivilDate } from '../date.ts';
import { Nm } from '../quantity.ts';
import { calibrationNotices } from './calibration.ts';
import type { Setting, SettingChart } from './setting-chart.ts';
import { validateChart } from './validate-chart.ts';

const chartOf = (
  settings: readonly (readonly [gear: string, step: string, torque: number, more?: Partial<Setting>])[],
  serial = 'T-1',
): SettingChart => ({
  scales: [{ name: 'gear' }, { name: 'step' }],
  settings: settings.map(([gear, step, torque, more], i) => ({ labels: [gear, step], torque: Nm(torque), row: i + 2, ...more })),
  repeatability: 0.04,
  interpolation: false,
  certificate: { number: 'C', serial, calibrated: '2026-01-10' as CivilDate, due: '2027-01-09' as CivilDate, uncertainty: 0.01 },
});
const found = (chart: SettingChart) =>
  validateChart(chart, 'T-1', { file: 'chart.csv' }).map(({ code, place }) => `${code} ${place?.row ?? ''}`.trim());

test('a chart that rises in each gear is used as it stands; a gear may begin below the end of the one before', () => {
  expect(
    found(
      chartOf([
        ['1', '1', 100],
        ['1', '2', 110],
        ['2', '1', 105],
        ['2', '2', 120],
      ]),
    ),
  ).toEqual([]);
});

test('a torque that falls or stays as its label rises is pointed at, in rows that came in any order', () => {
  expect(
    found(
      chartOf([
        ['1', '1', 100],
        ['1', '2', 99],
      ]),
    ),
  ).toEqual(['chart-not-monotone 3']);
  expect(
    found(
      chartOf([
        ['1', '2', 100],
        ['1', '1', 100],
      ]),
    ),
  ).toEqual(['chart-not-monotone 2']);
  // step 10 comes after step 9, not after step 1
  expect(
    found(
      chartOf([
        ['1', '10', 110],
        ['1', '9', 100],
      ]),
    ),
  ).toEqual([]);
});

test('a setting listed twice is refused, whether or not the torques agree', () => {
  expect(
    found(
      chartOf([
        ['1', '1', 100],
        ['1', '1', 100],
      ]),
    ),
  ).toEqual(['chart-setting-twice 3']);
  expect(
    found(
      chartOf([
        ['1', '1', 100],
        ['1', '1', 105],
      ]),
    ),
  ).toEqual(['chart-setting-twice 3']);
});

test('a missing line inside a numbered gear is a gap', () => {
  expect(
    found(
      chartOf([
        ['1', '1', 100],
        ['1', '3', 120],
      ]),
    ),
  ).toEqual(['chart-gap 3']);
});

test('another serial number is refused; blanks and case do not matter', () => {
  expect(found(chartOf([['1', '1', 100]], 'T-2'))).toEqual(['chart-other-serial']);
  expect(found(chartOf([['1', '1', 100]], ' t -1'))).toEqual([]);
});

test('a chart without a setting for tightening is empty', () => {
  expect(found(chartOf([]))).toEqual(['chart-empty']);
  expect(found(chartOf([['1', '1', 100, { looseningOnly: true }]]))).toEqual(['chart-empty']);
});

test.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY, 2e5])('a torque of %s N·m is absurd, and is not compared with others', (torque) => {
  expect(
    found(
      chartOf([
        ['1', '1', 100],
        ['1', '2', torque],
        ['1', '2', torque],
      ]),
    ),
  ).toEqual(['chart-torque-absurd 3', 'chart-torque-absurd 4']);
});

test('every fault is reported, not the first', () => {
  expect(
    found(
      chartOf(
        [
          ['1', '1', 100],
          ['1', '2', 90],
          ['1', '2', 95],
          ['1', '5', 0],
        ],
        'other',
      ),
    )
      .map((one) => one.split(' ')[0])
      .toSorted(),
  ).toEqual(['chart-not-monotone', 'chart-other-serial', 'chart-setting-twice', 'chart-torque-absurd']);
});

test.each([
  ['2026-01-09', ['calibration-later']],
  ['2026-01-10', []],
  ['2026-12-25', []],
  ['2026-12-26', ['calibration-due-soon']],
  ['2027-01-09', ['calibration-due-soon']],
  ['2027-01-10', ['calibration-expired']],
])('on %s a calibration from 2026-01-10 to 2027-01-09 says %j', (day, codes) => {
  expect(calibrationNotices(chartOf([]), 'T-1', day as CivilDate).map(({ code }) => code)).toEqual(codes);
});
