import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { appPages } from '@clampwright/server';

/** The app as it was built with this checkout; `undefined` where it was not built. */
export function appOf(): ReturnType<typeof appPages> | undefined {
  const folder = fileURLToPath(new URL('../../web/dist/', import.meta.url));
  return existsSync(folder) ? appPages(folder) : undefined;
}
