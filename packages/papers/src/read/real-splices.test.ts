import { readFileSync } from 'node:fs';
import { inDegrees, inKilonewton, inNewtonMetre } from '@clampwright/core';
import { expect, test } from 'vitest';
import { jointOf, planned } from '../../../../test/memory-folder.ts';

interface Row {
  readonly topic: string;
  readonly quantity: string;
  readonly inputs: { readonly d_mm?: number; readonly class?: string };
  readonly expected: number;
  readonly tolerance: { readonly abs: number };
}

// EN 1993-1-8 3.6.1, EN 1090-2:2018 Table 18: F_p,C as published, kN
const published = readFileSync(new URL('../../../reference/rows/en-metric.checks.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line.includes('"preload-target"'))
  .map((line) => JSON.parse(line) as Row)
  .filter(({ quantity, inputs }) => quantity === 'F_p,C' && inputs.d_mm !== undefined && inputs.class !== undefined);

const SIZES = [12, 16, 20, 22, 24, 27, 30, 36];
const splices = SIZES.flatMap((d) => ['8.8', '10.9'].map((grade) => ({ d, grade })));
const csv = `joint,rule set,layout,size,grade,system,clamped thickness [mm],lot,bolt 1,direction,seen from
${splices
  .flatMap(({ d, grade }) => [
    `T M${d} ${grade},en1090-torque,2x4,M${d},${grade},HR,${3 * d},L1,corner,clockwise,above`,
    `C M${d} ${grade},en1090-combined,2x4,M${d},${grade},HR,${3 * d},L2,corner,clockwise,above`,
  ])
  .join('\n')}
`;
const { plan, notices } = planned({ 'joints.csv': csv });

test('splices M12 to M36, 8.8 and 10.9, are planned by torque and combined method without a stop', () => {
  expect(notices).toEqual([]);
  expect(plan.joints).toHaveLength(32);
  expect(plan.joints.filter(({ verdict }) => verdict === 'stop').map(({ tag }) => tag)).toEqual([]);
});

test('enough published preloads are there to hold them against', () => {
  expect(published.length).toBeGreaterThan(9);
});

test.each(published.map(({ inputs, expected, tolerance }) => [inputs.d_mm, inputs.class, expected, tolerance.abs] as const))(
  'M%s %s aims at the published %s kN by both methods',
  (d, grade, expected, tolerance) => {
    for (const method of ['T', 'C']) {
      const { target } = jointOf(plan, `${method} M${d} ${grade}`).subgroups[0]!.tightening!;
      expect(Math.abs(inKilonewton(target.value) - expected)).toBeLessThanOrEqual(tolerance);
    }
  },
);

test.each(published.map(({ inputs, expected }) => [inputs.d_mm!, inputs.class!, expected] as const))(
  'M%s %s: first step 0.75, second step 1.10 of 0.13 · d · F_p,C; combined: 90° at Σt = 3 d',
  (d, grade, preload) => {
    const reference = 0.13 * d * preload; // EN 1090-2:2018 8.5.2
    const byTorque = jointOf(plan, `T M${d} ${grade}`).subgroups[0]!.tightening!.steps;
    const shares = byTorque.slice(1).map(({ torque }) => inNewtonMetre(torque!.wanted) / reference);
    // the published preload is rounded to 1 kN
    expect(Math.abs(shares[0]! - 0.75)).toBeLessThan(0.012);
    expect(Math.abs(shares[1]! - 1.1)).toBeLessThan(0.012);
    const { steps } = jointOf(plan, `C M${d} ${grade}`).subgroups[0]!.tightening!;
    expect(inNewtonMetre(steps[1]!.torque!.wanted) / reference).toBeCloseTo(0.75, 1);
    const { end } = steps.at(-1)!;
    expect(end.kind === 'mark at angle' ? inDegrees(end.angle) : undefined).toBeCloseTo(90, 9);
    expect(steps.at(-1)!.setting).toBe(undefined);
  },
);
