import { expect, test } from 'vitest';
import { bolt, refusals, tightening } from '../../../../test/bolt.ts';
import { inch, inDegrees, inInch, inKip, kip, lbfFt } from '../quantity.ts';

// RCSC 2014 Table 8.2: L ≤ 4 d 1/3 turn, ≤ 8 d 1/2, ≤ 12 d 2/3; 1/6 more for each face that slopes by up to 1:20
test.each([
  [3, 0, 120],
  [3.25, 0, 180],
  [6, 0, 180],
  [6.25, 0, 240],
  [9, 0, 240],
  [3, 1, 180],
  [6, 1, 240],
  [9, 2, 360],
] as const)('turn-of-nut, 3/4 in, %s in long, %s sloped faces: %s°', (length, slopedFaces, angle) => {
  const { steps, target } = tightening('rcsc-turn-of-nut', bolt('3/4', 'F3125 A325', { length: inch(length), slopedFaces }));
  const { end, torque } = steps.at(-1)!;
  expect(end.kind === 'mark at angle' ? inDegrees(end.angle) : undefined).toBeCloseTo(angle, 9);
  expect(torque).toBe(undefined);
  expect(inKip(target.value)).toBeCloseTo(28, 6);
});

test('turn-of-nut: beyond 12 d, and without a length, there is no turn', () => {
  expect(refusals('rcsc-turn-of-nut', bolt('3/4', 'F3125 A325', { length: inch(9.25) }))).toEqual(['rotation-not-tabulated']);
  expect(refusals('rcsc-turn-of-nut', bolt('3/4', 'F3125 A325'))).toEqual(['bolt-length-needed']);
});

// RCSC 2014 Table 8.1; 2020 Table 5.2 (120 ksi throughout): 1 1/8 in A325
test.each([
  ['2014', 56],
  ['2020', 64],
])('edition %s asks %s kip of a 1 1/8 in A325 bolt', (edition, tension) => {
  const known = { edition, length: inch(4) };
  expect(inKip(tightening('rcsc-turn-of-nut', bolt('1-1/8', 'F3125 A325', known)).target.value)).toBeCloseTo(tension, 6);
});

// RCSC 2014 8.2.2: a torque from a table or formula does not count
test('a calibrated wrench waits for its verification', () => {
  expect(refusals('rcsc-calibrated-wrench', bolt('3/4', 'F3125 A325'))).toEqual(['tested-torque-needed']);
});

// T that gave 1.05 T_m: the setting is that torque or up to 10 % above, never below
test('a calibrated wrench is set to the verified torque, never below', () => {
  const { steps, friction } = tightening('rcsc-calibrated-wrench', bolt('3/4', 'F3125 A325', { verifiedTorque: lbfFt(300) }));
  const { torque } = steps.at(-1)!;
  expect(torque!.low).toBe(lbfFt(300));
  expect(torque!.high).toBeGreaterThan(lbfFt(300));
  expect(friction?.kind === 'nut factor' ? friction.k : 0).toBeCloseTo(300 / ((1.05 * 28_000 * 0.75) / 12), 4);
});

// RCSC 2014 8.2.3 and 8.2.4; ASTM F959: 0.005 in feeler
test('twist-off bolts end at the spline, indicators at the feeler', () => {
  expect(tightening('rcsc-twist-off', bolt('3/4', 'F3125 F1852')).steps.at(-1)!.end.kind).toBe('spline off');
  expect(refusals('rcsc-twist-off', bolt('3/4', 'F3125 A325'))).toEqual(['system-needed']);
  const { end } = tightening('rcsc-dti', bolt('3/4', 'F3125 A325')).steps.at(-1)!;
  expect(end.kind === 'feeler refused' ? inInch(end.thickness) : 0).toBeCloseTo(0.005, 9);
});

test('the engineer may ask for more than the minimum, and for no less', () => {
  const target = (preload: number) =>
    tightening('rcsc-turn-of-nut', bolt('3/4', 'F3125 A325', { length: inch(3), given: { preload: kip(preload) } })).target;
  expect(inKip(target(30).value)).toBeCloseTo(30, 9);
  expect(target(30).source.provenance).toBe('engineer');
  expect(inKip(target(20).value)).toBeCloseTo(28, 6);
});

test.each([
  ['8.8', 'M20'],
  ['A193 B7', '3/4'],
  ['J429 Gr 5', '3/4'],
])('grade %s is no structural bolt', (grade, size) => {
  expect(refusals('rcsc-turn-of-nut', bolt(size, grade, { length: inch(3) }))).toHaveLength(1);
});

test('a size that the table does not list has no tension', () => {
  expect(refusals('rcsc-turn-of-nut', bolt('1-1/2', 'F3125 A325', { length: inch(6) }))).toEqual([]);
  expect(refusals('rcsc-turn-of-nut', bolt('M24', 'F3125 A325', { length: inch(3) }))).toEqual(['size-not-in-table']);
});
