import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MPa, mm, N } from '../quantity.ts';
import { frustumEnd, frustumStiffness, inSeries, memberStiffness, newtonPerMm } from './frusta.ts';
import { boltForce, clampForce, jointConstant, loadForClamp } from './joint-load.ts';

const part = (thickness: number, face: number) =>
  frustumStiffness({ modulus: MPa(207000), diameter: mm(12), thickness: mm(thickness), face: mm(face) });

describe('frustumStiffness()', () => {
  test('of a frustum cut in two is the two in series', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 40, noNaN: true }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (thickness, share) => {
        const upper = part(thickness * share, 18);
        const lower = part(thickness * (1 - share), frustumEnd(mm(18), mm(thickness * share)));
        expect(inSeries(upper, lower) / part(thickness, 18)).toBeCloseTo(1, 9);
      }),
    );
  });
  test('of the whole grip is two equal frusta (Shigley 9e eq. 8-22)', () => {
    const l = 40;
    const d = 12;
    const printed = (0.5774 * Math.PI * 207000 * d) / (2 * Math.log((5 * (0.5774 * l + 0.5 * d)) / (0.5774 * l + 2.5 * d)));
    expect(memberStiffness(MPa(207000), mm(d), mm(l)) / printed).toBeCloseTo(1, 3);
  });
});

describe('a joint under load', () => {
  test('shares the load between bolt and parts, whatever the stiffness', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.integer({ min: 1, max: 900 }), (ratio, load) => {
        const constant = jointConstant(newtonPerMm(ratio), newtonPerMm(1));
        const joint = { constant, preload: N(10000), load: N(load) };
        expect(boltForce(joint) - clampForce(joint)).toBeCloseTo(load, 6);
        expect(loadForClamp(constant, N(10000), clampForce(joint))).toBeCloseTo(load, 4);
      }),
    );
  });
});
