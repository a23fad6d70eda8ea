import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { idOf, type KeyPair, keyPairOf, sign, utf8 } from '@clampwright/record';
import { openStore, type Store, type Where } from '@clampwright/store';
import { apiClient, type Client } from '@clampwright/sync';
import type { Hono } from 'hono';
import type { Role } from './access-table.ts';
import { type Account, addAccount, hashPassword } from './accounts.ts';
import { type Context, openContext } from './context.ts';
import { createLogApp, type LogLine } from './create-log-app.ts';
import { openEnrolment } from './devices.ts';
import { beginSession, SESSION_COOKIE } from './sessions.ts';

export const ORIGIN = 'http://yard.test';
export const JOB = idOf('job', new Uint8Array(16).fill(1));
export const OTHER_JOB = idOf('job', new Uint8Array(16).fill(2));
const PASSWORD = 'tide table 2026';

/** A yard with its store, in one process: the server as it ships, without a socket. */
export interface TestYard {
  readonly app: Hono;
  readonly store: Store;
  readonly context: Context;
  readonly lines: LogLine[];
  /** the clock the server reads */
  readonly clock: { now: Date };
  readonly ask: (path: string, init?: RequestInit & { readonly as?: string }) => Promise<Response>;
  /** Signs in somebody who knows the job in a role; gives the cookie. */
  readonly signIn: (role: Role, books?: Account['books']) => Promise<string>;
  readonly enrol: (
    n: number,
    books?: readonly string[],
  ) => Promise<{ readonly keys: KeyPair; readonly token: string; readonly device: string; readonly client: Client }>;
  readonly close: () => Promise<void>;
}

export async function testYard(where?: Where): Promise<TestYard> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-yard-'));
  const clock = { now: new Date('2026-11-25T08:00:00.000Z') };
  const store = await openStore(where ?? { folder: join(folder, 'data') }, { now: () => clock.now });
  const context = await openContext(store, { now: () => clock.now, organisation: { name: 'Skerrow Sound tidal yard' } });
  const lines: LogLine[] = [];
  const app = createLogApp({ context, log: (line) => lines.push(line) });
  const password = await hashPassword(PASSWORD);
  let people = 0;
  const ask: TestYard['ask'] = async (path, { as, ...init } = {}) =>
    app.request(`${ORIGIN}${path}`, {
      ...init,
      headers: {
        ...(init.headers as Record<string, string>),
        ...(as === undefined ? {} : as.startsWith('Bearer') ? { authorization: as } : { cookie: as }),
      },
    });
  const overApp = ((url: string, init: RequestInit) => app.request(url, init)) as typeof fetch;

  return {
    app,
    store,
    context,
    lines,
    clock,
    ask,
    signIn: async (role, books = [JOB]) => {
      people += 1;
      const name = `${role} ${people}`;
      const account = { name, password, roles: [role], books, shared: false };
      await addAccount(store, account);
      return `${SESSION_COOKIE}=${await beginSession(store, account, clock.now)}`;
    },
    enrol: async (n, books = [JOB]) => {
      const keys = keyPairOf(new Uint8Array(32).fill(n));
      const { code } = await openEnrolment(store, `phone ${n}`, books, clock.now);
      const signature = Buffer.from(sign(utf8(`clampwright-enrol-1\n${code}`), keys)).toString('hex');
      const anyone = apiClient({ server: ORIGIN, fetch: overApp });
      const answer = await anyone('enrol', { body: { code, key: Buffer.from(keys.publicKey).toString('hex'), signature } });
      if (answer.kind !== 'answered') throw new Error(`not enrolled: ${JSON.stringify(answer)}`);
      const { token, device } = answer.value;
      return { keys, token, device, client: apiClient({ server: ORIGIN, token, fetch: overApp }) };
    },
    close: async () => {
      context.live.close();
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
}
