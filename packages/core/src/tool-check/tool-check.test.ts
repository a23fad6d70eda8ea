import { describe, expect, test } from 'vitest';
import { type CivilDate, civilDate } from '../date.ts';
import { Nm } from '../quantity.ts';
import { certificateNotices, type TypedCertificate } from './certificate-fields.ts';
import { boltsToRecheck, judgeShots } from './daily-check.ts';
import { yearsUntilLimit } from './iso-6789.ts';
import { oneSidedFactor, toleranceInterval, twoSidedFactor } from './tolerance-interval.ts';

const day = (text: string) => civilDate(text) as CivilDate;
const newtonMetres = (...values: number[]) => values.map((value) => Nm(value));

/** Berthouex & Brown, Statistics for Environmental Engineers, Table 21.1 (95 % coverage, 95 % confidence). */
test.each([
  [4, 6.34],
  [5, 5.08],
  [7, 4.02],
  [10, 3.39],
  [15, 2.96],
  [25, 2.64],
  [30, 2.55],
])('two-sided factor of %i shots: %d', (n, factor) => expect(twoSidedFactor(n, 0.95, 0.95)).toBeCloseTo(factor, 1));

/** NIST/SEMATECH e-Handbook 7.2.6.3: n = 43, 90 % coverage, 99 % confidence, by the noncentral t: 1.8740; SciPy 1.10: 1.873954. */
test('one-sided factor of the handbook’s example', () => expect(oneSidedFactor(43, 0.9, 0.99)).toBeCloseTo(1.873954, 5));

describe('daily check', () => {
  /** About ±4 % of reading is what such tools repeat to and what the torque method asks. Common practice, no source. */
  test('three shots inside the limit pass', () => {
    const check = judgeShots({ expected: Nm(800), readings: newtonMetres(796, 803, 788), limit: 0.04 });
    expect(check.ok && check.value).toMatchObject({ verdict: 'pass', quarantine: false, notices: [] });
  });
  test('one shot outside fails the tool, however good the mean, and sets its bolts aside', () => {
    const check = judgeShots({ expected: Nm(800), readings: newtonMetres(800, 845, 757), limit: 0.04 });
    expect(check.ok && check.value).toMatchObject({ verdict: 'fail', quarantine: true });
    expect(check.ok && Math.abs(check.value.bias)).toBeLessThan(0.002);
  });
  test('a single shot passes or fails, but says that it knows nothing of scatter', () => {
    const check = judgeShots({ expected: Nm(800), readings: newtonMetres(801), limit: 0.04 });
    expect(check.ok && check.value.notices.map(({ code }) => code)).toEqual(['check-few-shots']);
    expect(check.ok && check.value.repeatability).toBeUndefined();
    expect(check.ok && check.value.interval).toBeUndefined();
  });
  test('five shots leave a band far wider than their own spread', () => {
    const readings = [796, 803, 788, 810, 801];
    const { low, high } = toleranceInterval(readings);
    expect(high - low).toBeGreaterThan(3 * (Math.max(...readings) - Math.min(...readings)));
  });
  test('what is no reading is refused, all at once', () => {
    const refusal = judgeShots({ expected: Nm(0), readings: newtonMetres(-3, Number.NaN, 800), limit: 2 });
    expect(refusal.ok ? [] : refusal.notices.map(({ code }) => code)).toEqual(['check-reading', 'check-reading', 'check-limit']);
    const none = judgeShots({ expected: Nm(800), readings: [], limit: 0.04 });
    expect(none.ok ? [] : none.notices.map(({ code }) => code)).toEqual(['check-empty']);
  });
  test('bolts since the last good check are looked at again, those before it and after the failure are not', () => {
    const pulls = [1, 2, 3, 4, 5, 6].map((at) => ({ bolt: `J1/${at}`, at }));
    const made = [
      { at: 2.5, verdict: 'pass' },
      { at: 5.5, verdict: 'fail' },
    ] as const;
    expect(boltsToRecheck(made, pulls)).toEqual(['J1/3', 'J1/4', 'J1/5']);
    expect(boltsToRecheck([{ at: 5.5, verdict: 'fail' }], pulls)).toHaveLength(5);
    expect(boltsToRecheck([{ at: 2.5, verdict: 'pass' }], pulls)).toEqual([]);
  });
});

test('drift: an error that shrinks never meets the limit, one beyond it is there', () => {
  expect(yearsUntilLimit(0.02, 0.01, 1, 0.04)).toBeUndefined();
  expect(yearsUntilLimit(0.02, 0.05, 1, 0.04)).toBe(0);
  expect(yearsUntilLimit(-0.01, -0.02, 2, 0.04)).toBeCloseTo(4, 9);
});

describe('a hire tool’s certificate as typed', () => {
  const good: TypedCertificate = {
    number: 'C-77',
    serial: 'sk-h040',
    laboratory: 'Skerrow Sound yard laboratory',
    calibrated: day('2026-06-01'),
    due: day('2027-05-31'),
    uncertainty: 0.01,
    reference: 'transducer SK-REF-2',
    direction: 'tightening',
    adapter: 'socket 41, extension 125',
    typedBy: 'Tobias Quell',
    checkedBy: 'Ailsa Rennick',
  };
  const codes = (change: Partial<TypedCertificate>, tool = 'SK-H040', on = '2026-11-25') =>
    certificateNotices({ ...good, ...change }, tool, day(on)).map(({ code }) => code);
  test('whole, for this tool, read by a second person: nothing is said', () => expect(codes({})).toEqual([]));
  test('every gap at once', () => {
    expect(codes({ number: ' ', reference: '', checkedBy: '' })).toEqual([
      'certificate-word-missing',
      'certificate-word-missing',
      'certificate-unchecked',
    ]);
  });
  test.each<[string, Partial<TypedCertificate>, string]>([
    ['another serial number', { serial: 'SK-H041' }, 'certificate-other-serial'],
    ['dates the wrong way round', { due: day('2026-05-01') }, 'certificate-dates-crossed'],
    ['calibrated after the work', { calibrated: day('2026-12-01') }, 'certificate-from-future'],
    ['an uncertainty of 40 %', { uncertainty: 0.4 }, 'certificate-uncertainty-absurd'],
    ['one person for both', { checkedBy: 'Tobias Quell ' }, 'certificate-same-person'],
  ])('%s', (_, change, code) => expect(codes(change)).toEqual([code]));
});
