import { jobFolder } from '../packages/cli/src/job-folder.ts';
import { Draws, planJob } from '../packages/core/src/index.ts';
import { readEquipment, readJob } from '../packages/papers/src/index.ts';
import { CREW, JOB, MATE, openYard, type Yard } from './yard.ts';

const MINUTE = 60_000;
const BATTERIES = ['BAT-1', 'BAT-2'] as const;

/** A yard in the middle of its job: a tool with a history of checks, batteries that were changed, one joint done, one begun, others untouched. */
export async function openWorkedYard(phones = 0): Promise<Yard> {
  const clock = { at: Date.now() - 4 * 60 * MINUTE };
  const { equipment } = readEquipment(jobFolder('demo'));
  const yard = await openYard(phones, { equipment, now: () => new Date(clock.at) });
  const tell: Yard['office']['device']['append'] = (job, kind, body, more = { by: CREW.id }) => {
    clock.at += MINUTE / 20;
    return yard.office.device.append(job, kind, body, more);
  };
  const draws = new Draws(7);
  draws.start(0, 0);
  for (let ago = 40; ago > 0; ago -= 2) {
    const done = new Date(Date.now() - ago * 24 * 60 * MINUTE).toISOString().slice(0, 10);
    const readingNewtonMillimetre = Math.round(561_000 - (40 - ago) * 190 + draws.normal() * 2500);
    const check = { tool: 'SK-B204', setting: 'gear 2, step 9', passed: true, readingNewtonMillimetre };
    await tell(JOB, 'tool-checked', check, { by: CREW.id, paper: { done, card: `check sheet ${done}` } });
  }
  for (const tool of ['SK-B204', 'SK-B117', 'SK-H031']) await tell(JOB, 'tool-checked', { tool, setting: 'gear 2, step 9', passed: true });
  const { joints } = planJob(readJob(jobFolder('demo')).job!);
  let pulls = 0;
  for (const [tag, share] of [
    ['FB-S1', 1],
    ['TB-R1', 0.4],
  ] as const) {
    const { datum, subgroups, sequence } = joints.find((one) => one.tag === tag)!;
    const joint = yard.jointOf(tag);
    await tell(JOB, 'datum-confirmed', { joint, ...datum! });
    await tell(JOB, 'assembly-checked', { joint, washersRight: true, nutMarkingOutward: true, protrusionRight: true, packingRight: true });
    const order = subgroups[0]!.tightening!.steps.flatMap((step) => sequence.list.flat().map((bolt) => ({ step, bolt })));
    for (const { step, bolt } of order.slice(0, Math.floor(order.length * share))) {
      const tool = step.setting?.tool ?? 'SK-B204';
      const [battery, out] = pulls % 28 < 14 ? BATTERIES : [BATTERIES[1], BATTERIES[0]];
      if (pulls % 14 === 0) await tell(JOB, 'battery-changed', { tool, battery, ...(pulls > 0 ? { out } : {}) });
      clock.at += (0.4 + 0.3 * draws.uniform()) * MINUTE;
      const set = step.setting ? { tool, setting: step.setting.text } : {};
      await tell(JOB, 'bolt-tightened', { joint, bolt, step: step.name, ...set, end: 'stall', battery });
      pulls += 1;
    }
  }
  const raised = {
    nonconformance: 'n-washer',
    number: 'N-1',
    joint: yard.jointOf('TB-R1'),
    bolts: [3],
    text: 'washer turned with the nut',
  };
  await tell(JOB, 'nonconformance-raised', raised);
  await tell(JOB, 'joint-signed', { joint: yard.jointOf('FB-S1'), as: 'crew' }, { by: MATE.id });
  await yard.sync();
  return yard;
}
