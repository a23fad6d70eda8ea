import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arbitraryJob } from '../../../../test/arbitrary-job.ts';
import { boltCountOf, type Job } from '../job/job.ts';
import { levelOf } from '../notice/index.ts';
import { isPermutation } from '../sequence/ring.ts';
import type { Plan } from './plan.ts';
import { jointMemory, planJob } from './plan-job.ts';

const SEED = { seed: 20_261_125, numRuns: 200 };
const forEveryJob = (law: (job: Job, plan: Plan) => void) =>
  fc.assert(
    fc.property(arbitraryJob, (job) => law(job, planJob(job))),
    SEED,
  );

/** Paths in a value that JSON would drop or turn into null. */
function holes(value: unknown, path = '$'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (value === undefined) return [`${path} is undefined`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => holes(inner, `${path}.${key}`));
}

test('a plan holds no NaN, no Infinity and nothing undefined, whatever the job', () => {
  forEveryJob((_, plan) => {
    expect(holes(plan)).toEqual([]);
  });
});

test('the same job gives the same bytes', () => {
  forEveryJob((job, plan) => {
    expect(JSON.stringify(planJob(job))).toBe(JSON.stringify(plan));
  });
});

test('whoever plans again with a memory gets the plan that planning afresh gives, whatever was planned before', () => {
  const memory = jointMemory();
  forEveryJob((job, plan) => {
    expect(planJob(job, memory)).toEqual(plan);
    const [first, ...rest] = job.joints;
    const changed: Job = { ...job, joints: first ? [{ ...first, title: `${first.title}!`, pressure: !first.pressure }, ...rest] : [] };
    expect(planJob(changed, memory)).toEqual(planJob(changed));
    const drier: Job = { ...job, conditions: { ...job.conditions, wet: !job.conditions.wet } };
    expect(planJob(drier, memory)).toEqual(planJob(drier));
  });
});

test('a plan does not depend on the order of joints, tools and lots', () => {
  fc.assert(
    fc.property(
      arbitraryJob.chain((job) => {
        const shuffled = <T>(list: readonly T[]) => fc.shuffledSubarray([...list], { minLength: list.length, maxLength: list.length });
        return fc.record({ job: fc.constant(job), joints: shuffled(job.joints), tools: shuffled(job.tools), lots: shuffled(job.lots) });
      }),
      ({ job, ...order }) => {
        expect(planJob({ ...job, ...order })).toEqual(planJob(job));
      },
    ),
    SEED,
  );
});

test('a joint is ready only without a reason, and stops with every reason that stops or holds', () => {
  forEveryJob((_, { joints }) => {
    for (const { verdict, reasons } of joints) {
      const hard = reasons.some(({ code }) => levelOf(code) !== 'attention');
      expect(verdict).toBe(hard ? 'stop' : reasons.length > 0 ? 'attention' : 'ready');
    }
  });
});

test('every joint of the job is in the plan, and the sums add up', () => {
  forEveryJob((job, { joints, sums }) => {
    expect(joints.map(({ tag }) => tag).sort()).toEqual(job.joints.map(({ tag }) => tag).sort());
    expect(sums.ready + sums.attention + sums.stop).toBe(job.joints.length);
    expect(sums.bolts).toBe(job.joints.reduce((sum, { layout }) => sum + boltCountOf(layout), 0));
  });
});

test('a setting lies in the window of its step and was measured on that tool, or is interpolated where its owner allows', () => {
  let seen = 0;
  forEveryJob((job, plan) => {
    for (const { setting, torque } of plan.joints.flatMap(({ subgroups }) =>
      subgroups.flatMap(({ tightening }) => tightening?.steps ?? []),
    )) {
      if (!setting) continue;
      seen += 1;
      const { chart } = job.tools.find(({ serial }) => serial === setting.tool)!;
      expect(chart.certificate.due >= job.workDate).toBe(true);
      for (const one of [setting, ...(setting.next ? [setting.next] : [])]) {
        expect(one.torque).toBeGreaterThanOrEqual(torque!.low);
        expect(one.torque).toBeLessThanOrEqual(torque!.high);
        const measured = chart.settings.some(
          ({ labels, torque: at, looseningOnly }) => !looseningOnly && at === one.torque && labels.join() === one.labels.join(),
        );
        expect(one.interpolated ? chart.interpolation : measured).toBe(true);
        expect(one.loss).toBeGreaterThanOrEqual(setting.loss - 1e-12);
      }
    }
  });
  expect(seen).toBeGreaterThan(50);
});

test('a joint that is not stopped has a figure or an end signal for every bolt, each exactly once in its sequence', () => {
  let seen = 0;
  forEveryJob((_, { joints }) => {
    for (const joint of joints) {
      if (joint.verdict === 'stop') continue;
      seen += 1;
      expect(isPermutation(joint.sequence.list.flat(), joint.boltCount)).toBe(true);
      expect(joint.sequence.list.flat().map((bolt) => joint.sequence.painted[bolt - 1])).toEqual(
        Array.from({ length: joint.boltCount }, (_entry, i) => i + 1),
      );
      for (const { tightening } of joint.subgroups) {
        expect(tightening).toBeDefined();
        for (const { end, setting } of tightening!.steps) expect(end.kind !== 'stall' || setting !== undefined).toBe(true);
      }
    }
  });
  expect(seen).toBeGreaterThan(3);
});
