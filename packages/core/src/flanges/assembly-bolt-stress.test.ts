import { describe, expect, test } from 'vitest';
import { inch, inch2, inKsi, ksi, psi, rad } from '../quantity.ts';
import { type AssemblyBoltStressInput, assemblyBoltStress } from './assembly-bolt-stress.ts';
import { gasketArea } from './gasket-area.ts';

// ASME PCC-1 Appendix O, own numbers: NPS 3 Class 300, eight 3/4-10 studs of B7, gasket 4.0 × 5.0 in
const joint: AssemblyBoltStressInput = {
  gasketArea: gasketArea(inch(5), inch(4)),
  boltArea: inch2(0.302),
  bolts: 8,
  targetGasketStress: ksi(20),
  boltLimits: { least: ksi(42), greatest: ksi(73.5) },
  seatingStress: ksi(10),
  greatestGasketStress: ksi(40),
  operating: { gasketStress: ksi(5), pressure: psi(740), innerDiameter: inch(4) },
};
const codes = (input: AssemblyBoltStressInput) => assemblyBoltStress(input).notices.map(({ code }) => code);

describe('assemblyBoltStress()', () => {
  test('says nothing where the gasket’s own stress stands and every check is met', () => {
    expect(assemblyBoltStress(joint)).toMatchObject({ governedBy: 'gasket', notices: [] });
  });
  test('never moves the stress without saying so', () => {
    for (const target of [5, 10, 20, 25.2, 30, 60]) {
      const found = assemblyBoltStress({ ...joint, targetGasketStress: ksi(target) });
      expect(found.notices.some(({ code }) => code === 'assembly-stress-limited')).toBe(found.selected !== found.wanted);
    }
  });
  test('reports a gasket that stays unseated and keeps the stress as it is', () => {
    const found = assemblyBoltStress({ ...joint, seatingStress: ksi(30) });
    expect(found.notices.map(({ code }) => code)).toEqual(['gasket-not-seated']);
    expect(inKsi(found.selected)).toBeCloseTo(inKsi(found.wanted), 9);
  });
  test('reports service, crush and rotation, each by its own code', () => {
    expect(codes({ ...joint, operating: { ...joint.operating, remainingShare: 0.2 } })).toEqual(['gasket-unloads-in-service']);
    expect(codes({ ...joint, greatestGasketStress: ksi(12) })).toEqual(['gasket-crushed']);
    const flange = { greatest: ksi(70), rotation: { there: rad(0.02), allowed: rad(0.01) } };
    expect(codes({ ...joint, flange })).toEqual(['flange-rotates-too-far']);
  });
  test('lets the flange have the last word over the bolt’s least stress', () => {
    const found = assemblyBoltStress({ ...joint, targetGasketStress: ksi(5), flange: { greatest: ksi(30) } });
    expect(found.governedBy).toBe('flange');
    expect(inKsi(found.selected)).toBeCloseTo(30, 9);
  });
});
