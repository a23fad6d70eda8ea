import { hashOf } from '@clampwright/record';
import { apiClient } from '@clampwright/sync';
import type { Book } from './book.ts';
import type { OpenWorld } from './world.ts';

/** Bytes that an entry names: as they lie on this device, or from the server of the yard; `undefined` where neither has them. */
export async function attachmentOf(world: OpenWorld, book: Book, hash: string): Promise<Uint8Array | undefined> {
  const here = await world.device.attachment(book.job, hash);
  if (here) return here;
  const answer = await apiClient({ server: location.origin, token: world.identity.token })('attachment', {
    params: { job: book.job, hash },
  });
  return answer.kind === 'answered' && hashOf(answer.value) === hash ? answer.value : undefined;
}
