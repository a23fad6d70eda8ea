import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Plan } from '@clampwright/core';
import { getRequestListener } from '@hono/node-server';
import { createApp } from './create-app.ts';

export interface ServeOptions {
  /** the next free one is taken where it is busy; 0 lets the system choose */
  readonly port: number;
  readonly host?: string;
  readonly font?: Uint8Array;
}

export interface Serving {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const ATTEMPTS = 50;

/** Serves the pages of a plan, on this machine alone unless another host is asked for. */
export async function serve(plan: Plan, { port, host = '127.0.0.1', font }: ServeOptions): Promise<Serving> {
  const app = createApp(plan, font ? { font } : {});
  const server = createServer(getRequestListener(app.fetch));
  const listen = (on: number) =>
    new Promise<void>((resolve, reject) => {
      server.once('error', reject);
      server.listen(on, host, () => {
        server.off('error', reject);
        resolve();
      });
    });
  for (let attempt = 0; ; attempt += 1) {
    try {
      await listen(port + attempt);
      break;
    } catch (error) {
      const busy = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!busy || attempt >= ATTEMPTS || port + attempt >= 65_535) throw error;
    }
  }
  const taken = (server.address() as AddressInfo).port;
  return {
    url: `http://${host.includes(':') ? `[${host}]` : host}:${taken}/`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
  };
}
