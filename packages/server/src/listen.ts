import type { AddressInfo, Server } from 'node:net';

const ATTEMPTS = 50;

/** Listens on the port, or on the next free one where it is busy; 0 lets the system choose. Says which it was. */
export async function listen(server: Server, port: number, host: string): Promise<number> {
  for (let attempt = 0; ; attempt += 1) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port + attempt, host, () => {
          server.off('error', reject);
          resolve();
        });
      });
      return (server.address() as AddressInfo).port;
    } catch (error) {
      const busy = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!busy || attempt >= ATTEMPTS || port + attempt >= 65_535) throw error;
    }
  }
}

export const urlOf = (scheme: 'http' | 'https', host: string, port: number): string =>
  `${scheme}://${host.includes(':') ? `[${host}]` : host}:${port}/`;
