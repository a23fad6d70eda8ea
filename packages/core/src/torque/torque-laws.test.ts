import fc from 'fast-check';
import { expect, test } from 'vitest';
import { friction } from '../../../../test/arbitrary-job.ts';
import { metricThread } from '../fasteners/metric-threads.ts';
import { kN, mm, N } from '../quantity.ts';
import { byCoefficients, byNutFactor } from './friction.ts';
import type { WedgeForm } from './thread-arm.ts';
import { looseningTorque, preloadForTorque, torqueForPreload, torqueSplit } from './tightening-torque.ts';

const SEED = { seed: 20_261_125, numRuns: 200 };
const source = { standard: 'test report', provenance: 'certificate' } as const;
const thread = fc.constantFrom(5, 8, 10, 12, 16, 20, 24, 30, 36, 48, 64).map((diameter) => metricThread(mm(diameter))!);
const form = fc.constantFrom<WedgeForm[]>('exact', 'linear', 'short');
const preload = fc.double({ min: 100, max: 3e6, noNaN: true }).map(N);
const coefficient = fc.double({ min: 0.02, max: 0.5, noNaN: true });

test('the preload of the torque of a preload is that preload, for both kinds of friction and every form of the wedge', () => {
  fc.assert(
    fc.property(friction, thread, preload, form, (one, size, force, wedge) => {
      const back = preloadForTorque(one, size, torqueForPreload(one, size, force, wedge), wedge);
      expect(Math.abs(back / force - 1)).toBeLessThan(1e-12);
    }),
    SEED,
  );
});

test('more preload needs more torque', () => {
  fc.assert(
    fc.property(friction, thread, preload, form, (one, size, force, wedge) => {
      expect(torqueForPreload(one, size, N(force * 1.001), wedge)).toBeGreaterThan(torqueForPreload(one, size, force, wedge));
    }),
    SEED,
  );
});

test('more friction needs more torque, in the thread, under the face, and by nut factor', () => {
  fc.assert(
    fc.property(coefficient, coefficient, thread, form, (inThread, underFace, size, wedge) => {
      const torque = (a: number, b: number) => torqueForPreload(byCoefficients(a, b, mm(1.3 * size.diameter), source), size, kN(10), wedge);
      expect(torque(inThread + 0.01, underFace)).toBeGreaterThan(torque(inThread, underFace));
      expect(torque(inThread, underFace + 0.01)).toBeGreaterThan(torque(inThread, underFace));
      const byFactor = (k: number) => torqueForPreload(byNutFactor(k, source), size, kN(10), wedge);
      expect(byFactor(inThread + 0.01)).toBeGreaterThan(byFactor(inThread));
    }),
    SEED,
  );
});

test('a nut loosens with less torque than it was tightened with: the lead helps', () => {
  fc.assert(
    fc.property(friction, thread, preload, (one, size, force) => {
      expect(looseningTorque(one, size, force).value).toBeLessThan(torqueForPreload(one, size, force) + 1e-6 * force);
    }),
    SEED,
  );
});

test('the shares of the torque add up to one, and the three forms of the wedge differ by less than friction does', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.04, max: 0.24, noNaN: true }), thread, (mu, size) => {
      const one = byCoefficients(mu, mu, mm(1.3 * size.diameter), source);
      const { lead, threadFriction, bearingFriction } = torqueSplit(one, size);
      expect(lead + threadFriction + bearingFriction).toBeCloseTo(1, 12);
      const exact = torqueForPreload(one, size, kN(10));
      for (const wedge of ['linear', 'short'] as const) {
        // VDI 2230-1:2015 prints the short form for the exact one
        expect(Math.abs(torqueForPreload(one, size, kN(10), wedge) / exact - 1)).toBeLessThan(0.015);
      }
    }),
    SEED,
  );
});
