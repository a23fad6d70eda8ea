import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { deviceOf, hold, holdOther, join, name, openJoint, prepare, send, where } from './phone.ts';
import { CREW, JOB, MATE, openYard, type Yard } from './yard.ts';

let yard: Yard;
let phones: OpenBrowser[];
beforeAll(async () => {
  yard = await openYard(2);
  phones = await Promise.all([1, 2].map(() => openBrowser({ viewport: { width: 360, height: 740 }, hasTouch: true })));
});
afterAll(async () => {
  for (const phone of phones ?? []) await phone.close();
  await yard?.close();
});

test('two phones without network take a joint through a whole pass; nothing is lost, nothing doubled', async () => {
  let one = await phones[0]!.context.newPage();
  const two = await phones[1]!.context.newPage();
  await join(one, yard.server.url, yard.codes[0]!);
  await join(two, yard.server.url, yard.codes[1]!);
  for (const [page, n] of [
    [one, 1],
    [two, 2],
  ] as const)
    await yard.office.device.append(JOB, 'device-enrolled', { device: await deviceOf(page), key: '0'.repeat(64), name: `phone ${n}` });
  await yard.sync();
  await name(one, CREW);
  await name(two, MATE);

  // snug by one phone, in the network
  await prepare(one, 'FB-S1', ['SK-B204']);
  for (let bolt = 1; bolt <= 8; bolt += 1) await hold(one);
  await send(one);
  await send(two);

  // both away: one takes the next bolts, the other those from the far end; a reload and a flat battery in between
  for (const { context } of phones) await context.setOffline(true);
  await openJoint(one, 'FB-S1');
  await one.getByRole('link', { name: 'Go to the bolts' }).click();
  await hold(one);
  await hold(one);
  await one.reload();
  await hold(one);
  const before = await where(one);
  phones[0] = await phones[0]!.killAndOpen();
  await phones[0].context.setOffline(true);
  one = await phones[0].context.newPage();
  await one.goto(`${yard.server.url}/joint/${yard.jointOf('FB-S1')}/tighten`);
  await one
    .getByRole('button', { name: /^Tightened/ })
    .or(one.getByRole('button', { name: /Second person/ }))
    .first()
    .waitFor();
  expect(await where(one)).toBe(before);
  await hold(one);
  const slice = (await yard.book()).state('joint', yard.jointOf('FB-S1')).plan!.slice;
  const far = slice.sequence.flat().slice(4);
  await openJoint(two, 'FB-S1');
  await two.getByRole('link', { name: 'Go to the bolts' }).click();
  for (const bolt of far) await holdOther(two, bolt, 'two of us on one joint');

  for (const { context } of phones) await context.setOffline(false);
  await send(one);
  await send(two);
  await send(one);
  const joint = (await yard.book()).state('joint', yard.jointOf('FB-S1'));
  for (const step of ['snug', 'first step']) {
    const counts = slice.sequence.flat().map((bolt) => joint.bolts.get(bolt)?.steps[step]?.length);
    expect(counts, step).toEqual(Array(8).fill(1));
  }
  // what two phones could not know of each other is said, not dropped
  expect([...new Set(joint.found.map(({ notice }) => notice.code))].sort()).toEqual(['bolt-out-of-order']);

  // the last step, then signed by the crew, then inspected and signed by the inspector
  await openJoint(one, 'FB-S1');
  await one.getByRole('link', { name: 'Go to the bolts' }).click();
  for (let bolt = 1; bolt <= 8; bolt += 1) await hold(one);
  await one.getByText('Every bolt of every step is recorded.').waitFor();
  await one.getByRole('link', { name: 'Sign as crew' }).click();
  await one.getByRole('button', { name: 'Sign as crew' }).click();
  await openJoint(one, 'FB-S1');
  await one.getByRole('link', { name: 'Inspect' }).click();
  // never with the tool that tightened
  await one.getByLabel('Serial number of your wrench').fill('SK-B204');
  await one.getByText(/it cannot inspect them/).waitFor();
  await one.getByLabel('Serial number of your wrench').fill('IW-7');
  while (await one.getByRole('button', { name: 'Passed' }).isVisible()) {
    const bolt = await one.getByRole('heading', { level: 2 }).textContent();
    await one.getByRole('button', { name: 'Passed' }).click();
    await one.getByRole('heading', { level: 2, name: bolt!, exact: true }).waitFor({ state: 'detached' });
  }
  await one.getByRole('button', { name: 'Sign as inspector' }).click();
  await send(one);
  const done = (await yard.book()).state('joint', yard.jointOf('FB-S1'));
  expect(done.signatures.map(({ as, mention }) => [as, mention.by])).toEqual([
    ['crew', CREW.id],
    ['inspector', CREW.id],
  ]);
  expect([...done.bolts.values()].filter(({ inspections }) => inspections.length > 0).length).toBeGreaterThan(0);
}, 180_000);
