import { type CivilDate, planJob } from '@clampwright/core';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../test/demo-job.ts';
import { swapTo } from './swap.ts';

const job = demoJob();
const plan = planJob(job);
const cardOf = (tag: string) => plan.joints.find((joint) => joint.tag === tag)!;
const tool = (serial: string) => job.tools.find((one) => one.serial === serial)!;
const DAY = job.workDate;

describe('swapTo()', () => {
  const from = 'SK-B204';
  test('takes the settings from the chart of the other tool, for the same torques', () => {
    const card = cardOf('FB-S1');
    // the same tool, calibrated again: every torque of its chart 3 % higher
    const again = structuredClone(tool(from)) as ReturnType<typeof tool>;
    const hired = {
      ...again,
      serial: 'SK-B300',
      chart: {
        ...again.chart,
        settings: again.chart.settings.map((one) => ({ ...one, torque: (one.torque * 1.03) as typeof one.torque })),
        certificate: { ...again.chart.certificate, serial: 'SK-B300' },
      },
    };
    const swap = swapTo(job, card, from, hired, DAY);
    expect(swap.stops).toBe(false);
    const steps = card.subgroups[0]!.tightening!.steps.filter(({ setting }) => setting);
    expect(swap.settings.map(({ step }) => step)).toEqual(steps.map(({ name }) => name));
    for (const [at, { torque }] of steps.entries()) {
      const told = swap.settings[at]!;
      expect(told.torqueNewtonMillimetre).toBeGreaterThanOrEqual(torque!.low - 1);
      expect(told.torqueNewtonMillimetre).toBeLessThanOrEqual(torque!.high + 1);
      // force of an arm: torque over its length
      expect(told.reactionNewton).toBeCloseTo(told.torqueNewtonMillimetre! / hired.arm!, -1);
    }
  });
  test('stops where the other tool is too small, and says so', () => {
    const swap = swapTo(job, cardOf('FB-S1'), from, tool('SK-W210'), DAY);
    expect(swap.stops).toBe(true);
    expect(swap.notices.map(({ code }) => code)).toContain('tool-too-small');
  });
  test('stops where its calibration ran out before the day', () => {
    const swap = swapTo(job, cardOf('FB-S1'), from, { ...tool(from), serial: from }, '2028-01-01' as CivilDate);
    expect(swap.stops).toBe(true);
    expect(swap.notices.map(({ code }) => code)).toContain('calibration-expired');
  });
});
