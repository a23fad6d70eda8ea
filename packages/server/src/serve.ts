import { createServer } from 'node:http';
import type { Plan } from '@clampwright/core';
import { getRequestListener } from '@hono/node-server';
import { createApp } from './create-app.ts';
import { listen, urlOf } from './listen.ts';

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

/** Serves the pages of a plan, on this machine alone unless another host is asked for. */
export async function serve(plan: Plan, { port, host = '127.0.0.1', font }: ServeOptions): Promise<Serving> {
  const app = createApp(plan, font ? { font } : {});
  const server = createServer(getRequestListener(app.fetch));
  const taken = await listen(server, port, host);
  return {
    url: urlOf('http', host, taken),
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
  };
}
