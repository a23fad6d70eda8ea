import { afterAll, beforeAll, expect, test } from 'vitest';
import { JOB, OTHER_JOB, type TestYard, testYard } from './test-yard.ts';

let yard: TestYard;
beforeAll(async () => {
  yard = await testYard();
});
afterAll(() => yard.close());

test('nobody lets others into a job that they do not have themselves', async () => {
  const limited = await yard.signIn('planner', [JOB]);
  const whole = await yard.signIn('planner', 'all');
  const ask = async (as: string, method: string, path: string, body: unknown) =>
    (await yard.ask(`/api/v1${path}`, { as, method, body: JSON.stringify(body) })).status;
  const account = (name: string, books: unknown) => ({ name, password: 'a long password', roles: ['crew'], books });
  expect(await ask(limited, 'POST', '/enrolments', { name: 'phone', books: [JOB] })).toBe(201);
  expect(await ask(limited, 'POST', '/enrolments', { name: 'phone', books: [JOB, OTHER_JOB] })).toBe(404);
  expect(await ask(limited, 'POST', '/accounts', account('own', [JOB]))).toBe(201);
  expect(await ask(limited, 'POST', '/accounts', account('other', [OTHER_JOB]))).toBe(404);
  expect(await ask(limited, 'POST', '/accounts', account('every', 'all'))).toBe(404);
  expect(await ask(whole, 'POST', '/accounts', account('every', 'all'))).toBe(201);
  const mine = (await yard.enrol(1, [JOB])).device;
  const theirs = (await yard.enrol(2, [OTHER_JOB])).device;
  expect(await ask(limited, 'PUT', `/devices/${mine}/books`, { books: [OTHER_JOB] })).toBe(404);
  expect(await ask(limited, 'PUT', `/devices/${theirs}/books`, { books: [JOB] })).toBe(404);
  expect(await ask(limited, 'PUT', `/devices/${mine}/books`, { books: [] })).toBe(204);
  expect(await ask(whole, 'PUT', `/devices/${theirs}/books`, { books: [JOB, OTHER_JOB] })).toBe(204);
});
