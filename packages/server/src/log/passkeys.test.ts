import { expect, test } from 'vitest';
import { SERVER } from './log-key.ts';
import { testYard } from './test-yard.ts';

const ASK = '/api/v1/session/passkey/question';

test('a question for a passkey that nobody answers is forgotten, and nobody may ask without end', async () => {
  const yard = await testYard();
  const kept = async () => (await yard.store.access.list(SERVER, 'challenge')).length;
  for (let i = 0; i < 3; i += 1) expect((await yard.ask(ASK, { method: 'POST' })).status).toBe(200);
  expect(await kept()).toBe(3);
  yard.clock.now = new Date(yard.clock.now.getTime() + 300_001);
  expect((await yard.ask(ASK, { method: 'POST' })).status).toBe(200);
  expect(await kept()).toBe(1);
  const answers: number[] = [];
  for (let i = 0; i < 61; i += 1) answers.push((await yard.ask(ASK, { method: 'POST' })).status);
  expect(answers.at(-1)).toBe(429);
  await yard.close();
});
