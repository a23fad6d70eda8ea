import { createServer } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import { Hono } from 'hono';
import { listen, urlOf } from './listen.ts';
import { secure } from './secure.ts';

interface FolderOptions {
  /** the app */
  readonly pages: Hono;
  /** the job folder in one archive, as it lies there now */
  readonly archive: () => Uint8Array;
  /** the next free one is taken where it is busy; 0 lets the system choose */
  readonly port: number;
  readonly host?: string;
}

export interface Serving {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Where the app finds the folder it is to open. */
const ARCHIVE_PATH = '/folder.zip';

/** The app with one job folder to open in it: nothing is kept here, and nothing of it written. */
export function folderApp({ pages, archive }: Pick<FolderOptions, 'pages' | 'archive'>): Hono {
  const app = new Hono();
  app.use(secure);
  app.get(ARCHIVE_PATH, (c) => c.body(new Uint8Array(archive()), 200, { 'Content-Type': 'application/zip', 'Cache-Control': 'no-store' }));
  app.route('/', pages);
  return app;
}

/** Serves the app and one job folder, on this machine alone unless another host is asked for. `url`: the page that opens the folder. */
export async function serveFolder({ port, host = '127.0.0.1', ...rest }: FolderOptions): Promise<Serving> {
  const server = createServer(getRequestListener(folderApp(rest).fetch));
  const taken = await listen(server, port, host);
  return {
    url: `${urlOf('http', host, taken)}office/open`,
    close: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
  };
}
