import { hashOf } from '@clampwright/record';
import type { Client } from './api/client.ts';
import type { Device } from './device.ts';
import { keyOf } from './keys.ts';

/**
 * Brings cards, names and charts onto the device, so that it can work without network. Bytes that do not have their hash are not kept.
 * Gives what is still wanting: erased, or not reached.
 */
export async function fetchAttachments(device: Device, job: string, hashes: Iterable<string>, client: Client): Promise<readonly string[]> {
  const wanting: string[] = [];
  for (const hash of new Set(hashes)) {
    if (await device.attachment(job, hash)) continue;
    const answer = await client('attachment', { params: { job, hash } });
    if (answer.kind === 'answered' && hashOf(answer.value) === hash)
      await device.shelf.write({ put: [[keyOf.attachment(job, hash), answer.value]] });
    else wanting.push(hash);
    if (answer.kind === 'unreachable') break;
  }
  return wanting;
}
