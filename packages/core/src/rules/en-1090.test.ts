import { expect, test } from 'vitest';
import { bolt, refusals, tightening } from '../../../../test/bolt.ts';
import { inDegrees, inKilonewton, inNewtonMetre, mm } from '../quantity.ts';
import { byNutFactor } from '../torque/friction.ts';

const k2 = {
  kClass: 'K2',
  tested: true,
  system: 'HV',
  friction: byNutFactor(0.13, { standard: 'certificate of the lot', provenance: 'certificate' }, 0.05),
} as const;
const k1 = { kClass: 'K1', system: 'HV' } as const;
const m24 = { ...k2, clampThickness: mm(60) };

// EN 1090-2:2018 8.5.3 with EN 1993-1-8 3.6.1: M24 10.9, A_s 353 mm², k_m 0.13. M_r,2 = 0.13 · 24 · 247.1 = 771 N·m
test('torque method, M24 10.9, k = 0.13: 247 kN, 578 N·m, 848 N·m, control torque 809.5 N·m', () => {
  const plan = tightening('en1090-torque', bolt('M24', '10.9', k2));
  expect(inKilonewton(plan.target.value)).toBeCloseTo(247.1, 1);
  expect(plan.steps.map(({ name }) => name)).toEqual(['snug', 'first step', 'second step']);
  const [, first, second] = plan.steps.map(({ torque }) => (torque ? inNewtonMetre(torque.wanted) : undefined));
  expect(first).toBeCloseTo(578.2, 1);
  expect(second).toBeCloseTo(848.0, 1);
  expect(inNewtonMetre(plan.controlTorque!.value)).toBeCloseTo(809.5, 1);
  expect(plan.meaning).toBe('at least');
  expect(plan.aboveTarget.allowed).toBe(false);
});

// EN 1090-2:2018 Table 21 (2008: Table 21): Σt < 2d, < 6d, ≤ 10d
test.each([
  [24, 60],
  [47.9, 60],
  [48, 90],
  [143.9, 90],
  [144, 120],
  [240, 120],
])('combined method, M24 with %s mm clamped: turned by %s° after the first step', (thickness, angle) => {
  const { steps } = tightening('en1090-combined', bolt('M24', '10.9', { ...k1, clampThickness: mm(thickness) }));
  const end = steps.at(-1)!.end;
  expect(end.kind === 'mark at angle' ? inDegrees(end.angle) : undefined).toBeCloseTo(angle, 9);
  expect(steps.at(-1)!.torque).toBe(undefined);
});

test('combined method: beyond 10 d the table is silent, and so are we', () => {
  expect(refusals('en1090-combined', bolt('M24', '10.9', { ...k1, clampThickness: mm(240.1) }))).toEqual(['angle-not-tabulated']);
  expect(refusals('en1090-combined', bolt('M24', '10.9', k1))).toEqual(['clamp-thickness-needed']);
});

// EN 1090-2:2018 8.5.4 and 8.5.2: 0.75 · M_r,1, M_r,1 = 0.13 · d · F_p,C for class K1 (from memory)
test('combined method: the first step is 0.75 · 0.13 · d · F_p,C for K1, and rests on k_m for K2', () => {
  const first = (known: object) =>
    tightening('en1090-combined', bolt('M24', '10.9', { clampThickness: mm(60), ...known })).steps[1]!.torque!.wanted;
  expect(inNewtonMetre(first(k1))).toBeCloseTo(578.2, 1);
  const slippery = byNutFactor(0.11, k2.friction.source);
  expect(inNewtonMetre(first({ ...k2, friction: slippery }))).toBeCloseTo((578.2 * 0.11) / 0.13, 1);
});

// EN 1090-2:2018 8.5.5: shear wrench; annex J: 0.40 mm feeler under the part that is held
test('tension-controlled bolts end at the spline, indicators at the feeler: neither has a torque', () => {
  const hrc = tightening('en1090-hrc', bolt('M24', '10.9', { system: 'HRC', kClass: 'K0' }));
  expect(hrc.steps.map(({ end }) => end.kind)).toEqual(['firm contact', 'outer socket stops', 'spline off']);
  const dti = tightening('en1090-dti', bolt('M24', '10.9', { system: 'HR', kClass: 'K0' }));
  expect(dti.steps.at(-1)!.end).toEqual({ kind: 'feeler refused', thickness: 0.4 });
  for (const { torque } of [...hrc.steps, ...dti.steps]) expect(torque).toBe(undefined);
});

// EN 1090-2:2018 8.5.1, Table 20 (k-classes), EN 14399-1: classes 8.8 and 10.9, from M12 (from memory)
test.each([
  ['en1090-torque', 'M10', '10.9', k2, ['structural-size-too-small']],
  ['en1090-torque', 'M24', '12.9', k2, ['grade-not-preloadable']],
  ['en1090-torque', 'M20', '4.6', k2, ['grade-not-preloadable']],
  ['en1090-torque', 'M24', '10.9', k1, ['k-class-insufficient']],
  ['en1090-torque', 'M24', '10.9', { ...k2, kClass: undefined }, ['k-class-needed']],
  ['en1090-torque', 'M24', '10.9', { ...k2, tested: false }, ['lot-untested']],
  ['en1090-torque', 'M24', '10.9', { ...k2, friction: undefined }, ['lot-untested']],
  ['en1090-combined', 'M24', '10.9', { ...m24, kClass: 'K0' }, ['k-class-insufficient']],
  ['en1090-hrc', 'M24', '10.9', { system: 'HRC', kClass: 'K1' }, ['k-class-insufficient']],
  ['en1090-hrc', 'M24', '10.9', { system: 'HV', kClass: 'K0' }, ['system-needed']],
  ['en1090-dti', 'M24', '10.9', { system: 'HR' }, ['k-class-needed']],
  // EN 1090-2:2018 8.5.1: preloaded bolts are assemblies of EN 14399 (from memory)
  ['en1090-torque', 'M24', '10.9', { ...k2, system: 'plain' }, ['assembly-needed']],
  ['en1090-combined', 'M24', '10.9', { ...m24, system: 'plain' }, ['assembly-needed']],
  ['en1090-hrc', 'M24', '10.9', { system: 'plain', kClass: 'K0' }, ['assembly-needed']],
  ['en1090-dti', 'M24', '10.9', { system: 'plain', kClass: 'K0' }, ['assembly-needed']],
  ['de-reduced-torque', 'M24', '10.9', { system: 'plain', kClass: 'K1' }, ['assembly-needed']],
] as const)('%s gives no value for %s %s: %j', (id, size, grade, known, codes) => {
  const stated = Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined));
  expect(refusals(id, bolt(size, grade, stated))).toEqual(codes);
});

test('what is cited is the edition that was asked for', () => {
  const { steps, aboveTarget } = tightening('en1090-torque', bolt('M24', '10.9', { ...k2, edition: '2008' }));
  for (const { source } of [...steps, aboveTarget]) expect(`${source.standard}:${source.edition}`).toBe('EN 1090-2:2008');
});
