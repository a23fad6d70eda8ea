import { createServer as createPlain, type IncomingMessage } from 'node:http';
import { createServer as createSecure } from 'node:https';
import type { Organisation } from '@clampwright/papers/out';
import { checkEnd, openStore, type Where } from '@clampwright/store';
import { getRequestListener } from '@hono/node-server';
import type { Hono } from 'hono';
import { listen, urlOf } from '../listen.ts';
import { addAccount, allAccounts, hashPassword } from './accounts.ts';
import { openContext } from './context.ts';
import { createLogApp, type LogLine } from './create-log-app.ts';
import { newToken } from './tokens.ts';

export interface ServeBooksOptions {
  readonly where: Where;
  /** the next free one is taken where it is busy; 0 lets the system choose */
  readonly port: number;
  readonly host?: string;
  /** PEM; without it the server listens on this machine alone */
  readonly tls?: { readonly cert: string; readonly key: string };
  readonly log?: (line: LogLine) => void;
  /** what is served beside the API */
  readonly pages?: Hono;
  /** whose reports it hands out */
  readonly organisation?: Organisation;
}

export interface ServingBooks {
  readonly url: string;
  /** of the planner's account, made at the first start of a store and shown once */
  readonly firstPassword?: string;
  /** Puts another certificate in the place of the first; connections stay. */
  readonly renew: (tls: NonNullable<ServeBooksOptions['tls']>) => void;
  /** Answers what was asked, takes nothing new, and closes the store. */
  readonly close: () => Promise<void>;
}

/** Beyond this machine nothing goes without TLS: phones would have no camera and no offline pages, and passwords would be read. */
export class NeedsTls extends Error {
  constructor(host: string) {
    super(`listening on ${host} needs a certificate`);
  }
}

/** A book does not end as it was left. */
export class BookDamaged extends Error {}

const LOOPBACK = /^(127\.\d+\.\d+\.\d+|::1|localhost)$/;
const GRACE_MS = 10_000;

export async function serveBooks({
  where,
  port,
  host = '127.0.0.1',
  tls,
  log = () => {},
  pages,
  organisation,
}: ServeBooksOptions): Promise<ServingBooks> {
  if (!tls && !LOOPBACK.test(host)) throw new NeedsTls(host);
  const store = await openStore(where);
  try {
    for (const { job } of await store.books()) {
      const fault = await checkEnd(store, job);
      if (fault !== undefined) throw new BookDamaged(`${job}: ${fault}`);
    }
    const context = await openContext(store, { secure: tls !== undefined, ...(organisation ? { organisation } : {}) });
    const firstPassword = await firstPlanner(store);
    const app = createLogApp({
      context,
      log,
      ...(pages ? { pages } : {}),
      addressOf: (c) => (c.env as { incoming?: IncomingMessage }).incoming?.socket.remoteAddress ?? 'unknown',
    });
    const listener = getRequestListener(app.fetch);
    // A client that dawdles over its headers or its question is let go; a file of 64 MiB may take its time.
    const patience = {
      headersTimeout: 10_000,
      requestTimeout: 120_000,
      keepAliveTimeout: 30_000,
      connectionsCheckingInterval: 2000,
      maxHeaderSize: 16 * 1024,
    };
    const secureServer = tls && createSecure({ ...patience, ...tls, minVersion: 'TLSv1.2' }, listener);
    const server = secureServer ?? createPlain(patience, listener);
    const taken = await listen(server, port, host);
    log({ time: new Date().toISOString(), level: 'info', event: 'listening', port: taken, engine: store.engine });
    return {
      url: urlOf(tls ? 'https' : 'http', host, taken),
      ...(firstPassword === undefined ? {} : { firstPassword }),
      renew: (next) => secureServer?.setSecureContext({ ...next, minVersion: 'TLSv1.2' }),
      close: async () => {
        context.stopping.abort();
        context.live.close();
        const closed = new Promise<void>((resolve) => server.close(() => resolve()));
        // connections fall idle one by one as their last answer ends
        const idle = setInterval(() => server.closeIdleConnections(), 50);
        const late = setTimeout(() => server.closeAllConnections(), GRACE_MS);
        await closed;
        clearInterval(idle);
        clearTimeout(late);
        await store.close();
        log({ time: new Date().toISOString(), level: 'info', event: 'stopped' });
      },
    };
  } catch (error) {
    await store.close();
    throw error;
  }
}

async function firstPlanner(store: Parameters<typeof allAccounts>[0]): Promise<string | undefined> {
  if ((await allAccounts(store)).length > 0) return undefined;
  const password = newToken().slice(0, 20);
  const added = await addAccount(store, {
    name: 'planner',
    password: await hashPassword(password),
    roles: ['planner'],
    books: 'all',
    shared: false,
  });
  return added ? password : undefined;
}
