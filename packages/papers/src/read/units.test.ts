import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planned, SOUND } from '../../../../test/memory-folder.ts';

/** Every number of a plan with its path; places are left out, they differ where the text differs. */
function numbers(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === 'place' ? [] : numbers(inner, `${path}.${key}`)));
}

/** The same plan but for the last digits of a conversion. */
function expectAlike(one: unknown, other: unknown) {
  const [a, b] = [new Map(numbers(one)), new Map(numbers(other))];
  expect([...b.keys()]).toEqual([...a.keys()]);
  for (const [path, value] of a) expect(Math.abs(b.get(path)! - value), path).toBeLessThanOrEqual(1e-9 * Math.abs(value) + 1e-12);
}

// international yard and pound
const MM = 25.4;
const KN_PER_KIP = 4.4482216152605;
const NM_PER_LBF_FT = 1.3558179483314;
const MPA_PER_KSI = 6.894757293168361;

interface Figures {
  readonly clamp: number;
  readonly length: number;
  readonly preload: number;
  readonly torque: number;
  readonly stress: number;
}
const figures: fc.Arbitrary<Figures> = fc.record({
  clamp: fc.integer({ min: 20, max: 230 }),
  length: fc.integer({ min: 60, max: 280 }),
  preload: fc.integer({ min: 120, max: 260 }),
  torque: fc.integer({ min: 450, max: 900 }),
  stress: fc.integer({ min: 150, max: 400 }),
});
const asMetric = (one: Figures): Figures => one;
const asUs = ({ clamp, length, preload, torque, stress }: Figures): Figures => ({
  clamp: clamp / MM,
  length: length / MM,
  preload: preload / KN_PER_KIP,
  torque: torque / NM_PER_LBF_FT,
  stress: stress / MPA_PER_KSI,
});
const METRIC = { length: 'mm', force: 'kN', torque: 'N·m', stress: 'MPa' } as const;
const US = { length: 'in', force: 'kip', torque: 'lbf·ft', stress: 'ksi' } as const;

const HEADS = ['clamped thickness', 'bolt length', 'preload', 'torque', 'bolt stress'] as const;
type Units = typeof METRIC | typeof US;
const unitsOf = ({ length, force, torque, stress }: Units) => [length, length, force, torque, stress];

/** One list; units stand in headings, in cells, or nowhere. */
function list(one: Figures, units: Units, where: 'heading' | 'cell' | 'job'): string {
  const marks = unitsOf(units);
  const heads = HEADS.map((head, i) => (where === 'heading' ? `${head} [${marks[i]}]` : head));
  const texts = [one.clamp, one.length, one.preload, one.torque, one.stress].map((value, i) =>
    where === 'cell' ? `${value} ${marks[i]}` : String(value),
  );
  const [clamp, length, preload, torque, stress] = texts;
  return [
    `joint,rule set,layout,bolts,size,grade,system,lot,${heads.join(',')}`,
    `A,en1090-combined,2x4,,M24,10.9,HV,L2,${clamp},${length},,,`,
    `B,as-specified,ring,8,M24,10.9,plain,,${clamp},${length},${preload},${torque},`,
    `C,flange-bolt-stress,ring,8,7/8,A193 B7,plain,STUDS,${clamp},${length},,,${stress}`,
    `D,rcsc-turn-of-nut,ring,8,7/8,F3125 A325,plain,,${clamp},${length},,,`,
  ].join('\n');
}
const job = (units: 'metric' | 'US') => SOUND['job.yaml']!.toString().replace('conditions:', `units: ${units}\nconditions:`);
const planOf = (csv: string, units: 'metric' | 'US' = 'metric') => planned({ 'joints.csv': csv, 'job.yaml': job(units) }).plan.joints;

test('the same job in metric and in US units is the same plan, wherever the units stand', () => {
  fc.assert(
    fc.property(figures, (one) => {
      const plan = planOf(list(asMetric(one), METRIC, 'heading'));
      expectAlike(plan, planOf(list(asMetric(one), METRIC, 'cell')));
      expectAlike(plan, planOf(list(asMetric(one), METRIC, 'job')));
      expectAlike(plan, planOf(list(asUs(one), US, 'heading')));
      expectAlike(plan, planOf(list(asUs(one), US, 'cell')));
      expectAlike(plan, planOf(list(asUs(one), US, 'job'), 'US'));
      expectAlike(plan, planOf(list(asUs(one), US, 'cell'), 'US'));
    }),
    { seed: 20_261_125, numRuns: 40 },
  );
});
