import { hashOf, idOf, ROLES, utf8 } from '@clampwright/record';
import { CONTRACT, type Endpoint, type EndpointName, isSchema } from '@clampwright/sync';
import { Validator } from '@seriousme/openapi-schema-validator';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ACCESS, type Who } from './access-table.ts';
import { openApi } from './openapi.ts';
import { JOB, OTHER_JOB, type TestYard, testYard } from './test-yard.ts';

const PERSON = idOf('person', new Uint8Array(16).fill(3));
const FILE = utf8('a photo');
const PARAMS: Readonly<Record<string, string>> = {
  job: JOB,
  hash: hashOf(FILE),
  person: PERSON,
  name: 'nobody of that name',
  device: 'd-00000000000000000000000000',
  joint: 'n-00000000000000000000000000',
  passkey: 'nosuchpasskeyhere',
};
const BODIES: Partial<Record<EndpointName, unknown>> = {
  signIn: { name: 'nobody', password: 'no such password' },
  addAccount: { name: 'new one', password: 'a long password', roles: ['crew'], books: [] },
  changePassword: { old: 'not the old one', password: 'a long password' },
  openEnrolment: { name: 'phone', books: [] },
  addPasskey: { label: 'desk', response: {} },
  signInWithPasskey: { response: {} },
  enrol: { code: 'XXXXX-XXXXX', key: '0'.repeat(64), signature: '0'.repeat(128) },
  setDeviceBooks: { books: [] },
  setPin: { pin: '4711' },
  addBook: { title: 'Another job' },
  backup: { password: 'not the right one' },
  setOrganisation: { name: 'A yard' },
};
/** What a rightful asker may be answered, where it is not the status of the contract: the question is sound, but what it names is not there. */
const ALSO: Partial<Record<EndpointName, number>> = {
  signIn: 401,
  changePassword: 401,
  enrol: 400,
  addPasskey: 400,
  removePasskey: 404,
  signInWithPasskey: 401,
  removeAccount: 404,
  revokeDevice: 404,
  setDeviceBooks: 404,
  joint: 404,
  pushBatch: 400,
  inclusion: 400,
  consistency: 400,
  attachment: 404,
  eraseAttachment: 404,
  handover: 404,
  report: 404,
  exportBook: 404,
  backup: 403,
  addAccount: 409,
};

let yard: TestYard;
const askers = new Map<Who, string | undefined>();
beforeAll(async () => {
  yard = await testYard();
  askers.set('anyone', undefined);
  askers.set('device', `Bearer ${(await yard.enrol(1)).token}`);
  for (const role of ROLES) askers.set(role, await yard.signIn(role));
});
afterAll(() => yard.close());

async function question(name: EndpointName, who: Who, params = PARAMS): Promise<Response> {
  const { method, path, query, body }: Endpoint = CONTRACT[name];
  const filled = path.replace(/\{(\w+)\}/g, (_, part: string) => encodeURIComponent(params[part]!));
  const search = Object.keys(query ?? {})
    .map((key) => `${key}=1`)
    .join('&');
  const as = askers.get(who);
  const sent =
    body === undefined
      ? undefined
      : isSchema(body)
        ? JSON.stringify(BODIES[name])
        : name === 'putAttachment'
          ? Buffer.from(FILE)
          : 'no batch';
  const abort = new AbortController();
  const response = await yard.ask(`/api/v1${filled}?${search}`, {
    method,
    signal: abort.signal,
    ...(sent === undefined ? {} : { body: sent }),
    ...(as === undefined ? {} : { as }),
  });
  if (name === 'events') {
    await response.body?.cancel();
    abort.abort();
  }
  return response;
}

describe.each(Object.keys(CONTRACT) as EndpointName[])('%s', (name) => {
  test.each(['anyone', 'device', ...ROLES] as const)('lets in %s as the table says', async (who) => {
    const allowed = ACCESS[name].includes('anyone') || ACCESS[name].includes(who);
    if (name === 'signOut' && allowed && who !== 'client') return; // would sign the others out; one stands for all
    const response = await question(name, who);
    if (!allowed) {
      expect(response.status).toBe(who === 'anyone' ? 401 : 403);
      return;
    }
    expect([CONTRACT[name].status, ALSO[name]]).toContain(response.status);
    if (name === 'signOut') askers.set('client', await yard.signIn('client'));
    if (response.status !== CONTRACT[name].status) {
      expect(((await response.json()) as { notices: unknown[] }).notices.length).toBeGreaterThan(0);
      return;
    }
    const { answer }: Endpoint = CONTRACT[name];
    if (isSchema(answer)) expect(answer.safeParse(await response.json()).success).toBe(true);
  });
});

test('a job that is not one’s own is not there, for any endpoint of a book and anybody who asks', async () => {
  const ofBooks = (Object.keys(CONTRACT) as EndpointName[]).filter((name) => CONTRACT[name].path.includes('{job}'));
  expect(ofBooks.length).toBeGreaterThan(12);
  for (const name of ofBooks)
    for (const who of ACCESS[name]) {
      const response = await question(name, who, { ...PARAMS, job: OTHER_JOB });
      expect({ name, who, status: response.status }).toEqual({ name, who, status: 404 });
    }
});

describe('the OpenAPI document', () => {
  test('is valid OpenAPI 3.1', async () => {
    const result = await new Validator().validate(openApi());
    expect(result.errors).toBe(undefined);
    expect(result.valid).toBe(true);
  });
  test('describes every endpoint of the contract and the roles that may ask', () => {
    const operations = Object.values(
      openApi().paths as Record<string, Record<string, { operationId: string; 'x-roles': readonly string[] }>>,
    ).flatMap((path) => Object.values(path));
    expect(operations.map(({ operationId }) => operationId).sort()).toEqual(Object.keys(CONTRACT).sort());
    for (const one of operations) expect(one['x-roles']).toEqual(ACCESS[one.operationId as EndpointName]);
  });
  test('is served as it is made', async () => {
    expect(await (await yard.ask('/api/v1/openapi.json')).json()).toEqual(JSON.parse(JSON.stringify(openApi())));
  });
});
