import { expect, test } from 'vitest';
import { bolt, refusals, tightening } from '../../../../test/bolt.ts';
import { inKilonewton, inLbf, inLbfFt, kN, ksi, mm, Nm } from '../quantity.ts';
import { byCoefficients, byNutFactor } from '../torque/friction.ts';
import { findRuleSet, RULE_SETS } from './index.ts';

const source = { standard: 'torque test of the lot', provenance: 'certificate' } as const;
const flange = { friction: byNutFactor(0.2, source), tested: true, given: { boltStress: ksi(50) } };

// ASME PCC-1:2013 worked through for NPS 8 Class 300: 12 studs 7/8-9, A_r 0.4193 in², 50 ksi, K 0.2
test('flange NPS 8 Class 300: 20 965 lbf and 305.7 lbf·ft', () => {
  const plan = tightening('flange-bolt-stress', bolt('7/8', 'A193 B7', flange));
  // the printed area 0.419 in² is 0.1 % smaller than the computed one
  expect(Math.abs(inLbf(plan.target.value) / 20_965 - 1)).toBeLessThan(0.002);
  const final = plan.steps.find(({ name }) => name === 'round 3')!;
  expect(Math.abs(inLbfFt(final.torque!.wanted) / 305.7 - 1)).toBeLessThan(0.002);
  expect(plan.meaning).toBe('aim');
});

// ASME PCC-1:2013 Table 2, legacy pattern
test('flange rounds: snug, 20–30 %, 50–70 %, 100 %, round the circle until no nut moves, and again after four hours', () => {
  const { steps, cautions } = tightening('flange-bolt-stress', bolt('7/8', 'A193 B7', flange));
  const full = steps[3]!.torque!.wanted;
  expect(steps.map(({ name, order, end }) => `${name}, ${order}, ${end.kind}`)).toEqual([
    'snug, sequence, firm contact',
    'round 1, sequence, stall',
    'round 2, sequence, stall',
    'round 3, sequence, stall',
    'circular round, circular, no nut moves',
    're-check, circular, no nut moves',
  ]);
  expect(
    [steps[1]!, steps[2]!].flatMap(({ torque }) => [torque!.low / full, torque!.high / full]).map((share) => Math.round(share * 100)),
  ).toEqual([20, 30, 50, 70]);
  expect(cautions).toContain('recheck-after-four-hours');
});

test('a flange without the engineer’s bolt stress, or without friction, has no torque; one beyond yield is refused', () => {
  expect(refusals('flange-bolt-stress', bolt('7/8', 'A193 B7', { ...flange, given: {} }))).toEqual(['bolt-stress-needed']);
  expect(refusals('flange-bolt-stress', bolt('7/8', 'A193 B7', { given: flange.given }))).toEqual(['friction-unknown']);
  expect(refusals('flange-bolt-stress', bolt('7/8', 'A193 B7', { ...flange, given: { boltStress: ksi(105) } }))).toEqual([
    'bolt-stress-above-yield',
  ]);
  // ASME PCC-1:2013 appendix O: more than 70 % of 105 ksi is unusual
  const high = tightening('flange-bolt-stress', bolt('7/8', 'A193 B7', { ...flange, given: { boltStress: ksi(75) } }));
  expect(high.notices.map(({ code }) => code)).toEqual(['bolt-stress-high']);
});

// VDI 2230-1 Table A1: M10 8.8, μ 0.12: 27.3 kN in 1986, 29.6 kN since 2003
test.each([
  ['1986', 27.3],
  ['2003', 29.6],
  ['2015', 29.6],
])('VDI 2230 of %s gives M10 8.8 at μ 0.12 %s kN', (edition, preload) => {
  const friction = byCoefficients(0.12, 0.12, mm(12.815), source);
  const { target } = tightening('vdi-2230', bolt('M10', '8.8', { friction, edition }));
  expect(Math.abs(inKilonewton(target.value) - preload)).toBeLessThan(0.06);
  expect(target.source.edition).toBe(edition);
});

// VDI 2230-1:2003 Table A1: M_A 51 N·m for M10 × 1.25, 8.8, μ 0.12
test('VDI 2230 gives M10 × 1.25 8.8 at μ 0.12 a torque of 51 N·m', () => {
  const friction = byCoefficients(0.12, 0.12, mm(12.815), source);
  const { steps } = tightening('vdi-2230', bolt('M10x1.25', '8.8', { friction }));
  expect(Math.abs(steps.at(-1)!.torque!.wanted / 1000 - 51)).toBeLessThan(0.5);
});

test('VDI 2230 asks for coefficients of friction, not for a nut factor', () => {
  expect(refusals('vdi-2230', bolt('M10', '8.8'))).toEqual(['friction-unknown']);
  expect(refusals('vdi-2230', bolt('M10', '8.8', { friction: byNutFactor(0.18, source) }))).toEqual(['coefficients-needed']);
});

test('as specified: of torque, preload and friction two make the third, and one alone is refused', () => {
  const k = byNutFactor(0.15, source);
  expect(refusals('as-specified', bolt('M20', '8.8'))).toEqual(['figure-needed']);
  expect(refusals('as-specified', bolt('M20', '8.8', { friction: k }))).toEqual(['figure-needed']);
  expect(refusals('as-specified', bolt('M20', '8.8', { given: { torque: Nm(300) } }))).toEqual(['preload-basis-needed']);
  expect(refusals('as-specified', bolt('M20', '8.8', { given: { preload: kN(100) } }))).toEqual(['preload-basis-needed']);
  const torqueOf = (known: object) => tightening('as-specified', bolt('M20', '8.8', known)).steps.at(-1)!.torque!.wanted;
  const targetOf = (known: object) => tightening('as-specified', bolt('M20', '8.8', known)).target.value;
  expect(torqueOf({ friction: k, given: { preload: kN(100) } })).toBeCloseTo(Nm(300), 3);
  expect(targetOf({ friction: k, given: { torque: Nm(300) } })).toBeCloseTo(kN(100), 3);
  expect([targetOf({ given: { torque: Nm(300), preload: kN(100) } }), torqueOf({ given: { torque: Nm(300), preload: kN(100) } })]).toEqual([
    kN(100),
    Nm(300),
  ]);
});

test('a rule set or an edition that is not there is said, with what is', () => {
  const unknown = findRuleSet('by-feel');
  expect(unknown.ok ? [] : unknown.notices.map(({ code }) => code)).toEqual(['rule-unknown']);
  for (const name of ['constructor', 'toString', '__proto__']) expect(findRuleSet(name).ok).toBe(false);
  const edition = findRuleSet('vdi-2230', '1977');
  expect(edition.ok ? undefined : edition.notices[0]?.params).toEqual({ edition: '1977', known: '2015, 2003, 1986' });
});

test('every rule set says where it comes from', () => {
  for (const { sources } of Object.values(RULE_SETS)) for (const one of sources) expect(one.standard).not.toBe('');
});
