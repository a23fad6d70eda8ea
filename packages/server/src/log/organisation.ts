import type { Organisation } from '@clampwright/papers/out';
import type { Store } from '@clampwright/store';
import { SERVER } from './log-key.ts';

/** As it is kept among the records of the store. */
interface Kept {
  readonly name: string;
  readonly address?: string;
  /** base64 */
  readonly mark?: string;
}

const ID = 'own';

/** Whose reports these are: as it was set in the app, else as the server was started with. */
export async function organisationOf(store: Store, started: Organisation | undefined): Promise<Organisation | undefined> {
  const kept = await store.access.get<Kept>(SERVER, 'organisation', ID);
  if (!kept) return started;
  const { name, address, mark } = kept;
  return {
    name,
    ...(address === undefined || address === '' ? {} : { address }),
    ...(mark === undefined ? {} : { mark: new Uint8Array(Buffer.from(mark, 'base64')) }),
  };
}

/** `mark`: absent, it stays; `null` takes it away. */
export async function setOrganisation(
  store: Store,
  { name, address, mark }: { readonly name: string; readonly address?: string | undefined; readonly mark?: string | null | undefined },
  before: Organisation | undefined,
): Promise<void> {
  const stays = before?.mark && Buffer.from(before.mark).toString('base64');
  const next = mark === null ? undefined : (mark ?? stays);
  await store.access.put(SERVER, 'organisation', ID, {
    name,
    ...(address === undefined ? {} : { address }),
    ...(next === undefined ? {} : { mark: next }),
  } satisfies Kept);
}

const BEGINS = [
  [0x89, 0x50, 0x4e, 0x47],
  [0xff, 0xd8, 0xff],
] as const;

/** PNG or JPEG, by its first bytes. */
export const isPicture = (base64: string): boolean => {
  const bytes = Buffer.from(base64, 'base64');
  return BEGINS.some((first) => first.every((byte, at) => bytes[at] === byte));
};
