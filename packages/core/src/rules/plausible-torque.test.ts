import { expect, test } from 'vitest';
import { bolt, refusals } from '../../../../test/bolt.ts';
import { kN, lbfFt, Nm } from '../quantity.ts';
import { byNutFactor } from '../torque/friction.ts';

const source = { standard: 'test', provenance: 'certificate' } as const;

// M24 10.9 at 247 kN: k = 0.13 means 771 N·m; read as lbf·ft the figure grows by 1.356, read the other way it shrinks by it
test.each([
  [771, []],
  [475, []],
  [460, ['torque-unit-doubt']],
  [2074, []],
  [2500, ['torque-unit-doubt']],
  [7710, ['torque-implausible']],
  [77.1, ['torque-implausible']],
])('%s N·m for 247 kN on M24: %j', (torque, codes) => {
  expect(refusals('as-specified', bolt('M24', '10.9', { given: { torque: Nm(torque), preload: kN(247) } }))).toEqual(codes);
});

// M24 8.8 yields at about 200 kN while it is tightened: 0.15 · 24 mm · 200 kN = 720 N·m
test.each([
  [600, []],
  [813, ['torque-unit-doubt']],
  [1300, ['torque-implausible']],
])('%s N·m at k = 0.15 on M24 8.8: %j', (torque, codes) => {
  expect(refusals('as-specified', bolt('M24', '8.8', { friction: byNutFactor(0.15, source), given: { torque: Nm(torque) } }))).toEqual(
    codes,
  );
});

// 3/4 in A325, 1.05 · 28 kip: k = 0.16 means 294 lbf·ft
test.each([
  [294, []],
  [120, ['torque-unit-doubt']],
  [800, ['torque-unit-doubt']],
  [2940, ['torque-implausible']],
])('a verification of %s lbf·ft on 3/4 in A325: %j', (torque, codes) => {
  expect(refusals('rcsc-calibrated-wrench', bolt('3/4', 'F3125 A325', { verifiedTorque: lbfFt(torque) }))).toEqual(codes);
});
