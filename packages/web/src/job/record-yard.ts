import type { YardEntry } from '@clampwright/record';
import type { Book } from './book.ts';
import type { OpenWorld } from './world.ts';

/** Writes entries for the book of the yard, with what is kept beside them: as `clampwright register` does, by a person. */
export async function recordYard(world: OpenWorld, yard: Book, entries: readonly YardEntry[], by: string): Promise<void> {
  for (const { kind, body, attachments } of entries) {
    for (const bytes of attachments) await world.device.attach(yard.job, bytes);
    await yard.record(kind, body, by);
  }
  await yard.refresh();
}
