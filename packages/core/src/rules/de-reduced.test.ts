import { expect, test } from 'vitest';
import { bolt, refusals, tightening } from '../../../../test/bolt.ts';
import { inDegrees, inKilonewton, inNewtonMetre, mm } from '../quantity.ts';

const hv = { system: 'HV', kClass: 'K1' } as const;

// DIN EN 1993-1-8/NA:2010 Table NA.A.2; DIN 18800-7:2008 Table B.1: preload kN, M_A N·m, pre-tightening torque N·m
test.each([
  ['M12', 50, 100, 75],
  ['M16', 100, 250, 190],
  ['M20', 160, 450, 340],
  ['M22', 190, 650, 490],
  ['M24', 220, 800, 600],
  ['M27', 290, 1250, 940],
  ['M30', 350, 1650, 1240],
  ['M36', 510, 2800, 2100],
])('%s HV 10.9: %s kN, %s N·m, first step of the combined method %s N·m', (size, preload, torque, combined) => {
  const byTorque = tightening('de-reduced-torque', bolt(size, '10.9', hv));
  expect(inKilonewton(byTorque.target.value)).toBeCloseTo(preload, 9);
  expect(inNewtonMetre(byTorque.steps.at(-1)!.torque!.wanted)).toBeCloseTo(torque, 9);
  const byAngle = tightening('de-reduced-combined', bolt(size, '10.9', { ...hv, clampThickness: mm(40) }));
  expect(inNewtonMetre(byAngle.steps[1]!.torque!.wanted)).toBeCloseTo(combined, 9);
});

// these angles aim at F_p,C*, and are smaller than those of EN 1090-2 Table 21
test.each([
  [30, 45],
  [60, 60],
  [150, 90],
])('combined method, M24 with %s mm clamped: turned by %s°', (thickness, angle) => {
  const { end } = tightening('de-reduced-combined', bolt('M24', '10.9', { ...hv, clampThickness: mm(thickness) })).steps.at(-1)!;
  expect(end.kind === 'mark at angle' ? inDegrees(end.angle) : undefined).toBeCloseTo(angle, 9);
});

test.each([
  ['8.8 in place of 10.9', bolt('M24', '8.8', hv), ['system-needed']],
  ['HR in place of HV', bolt('M24', '10.9', { ...hv, system: 'HR' }), ['system-needed']],
  ['no k-class', bolt('M24', '10.9', { system: 'HV' }), ['k-class-needed']],
  ['a size that is not in the table', bolt('M18', '10.9', hv), ['size-not-in-table']],
  ['a size without a torque', bolt('M39', '10.9', { ...hv, clampThickness: mm(60) }), []],
])('%s: %j', (_, one, codes) => {
  expect(refusals('de-reduced-torque', one)).toEqual(codes);
});

test('a size that DIN 18800-7 does not list has no combined method', () => {
  expect(refusals('de-reduced-combined', bolt('M39', '10.9', { ...hv, clampThickness: mm(60) }))).toEqual(['size-not-in-table']);
});
