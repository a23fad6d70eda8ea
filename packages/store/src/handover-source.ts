import { type HandoverSource, openFold, readEntry } from '@clampwright/record';
import type { Store } from './store.ts';

/** A device in this book for which no key is known: its entries could not be verified by anybody. */
export class KeyMissing extends Error {
  constructor(readonly device: string) {
    super(`no key is known of device ${device}`);
  }
}

/** What a handover file of a book is written from, as the book stands now. `keyOf` knows devices that the book itself does not enrol. */
export async function handoverSource(
  store: Store,
  job: string,
  { made, keyOf }: { readonly made: Date; readonly keyOf: (device: string) => Promise<Uint8Array | undefined> },
): Promise<HandoverSource> {
  const tail = await store.tail(job);
  const fold = openFold();
  for (let from = 0; from < tail.size; from += 1000)
    for (const { bytes } of await store.rows(job, from, Math.min(1000, tail.size - from))) {
      const kept = readEntry(bytes);
      if (kept.ok && HEADING.has(kept.value.entry.kind)) fold.add(kept.value);
    }
  const deviceKeys = await Promise.all(
    (await store.devices(job)).map(async (device) => {
      const told = fold.state('device', device).key;
      const key = told === undefined ? await keyOf(device) : new Uint8Array(Buffer.from(told, 'hex'));
      if (!key) throw new KeyMissing(device);
      return { device, key };
    }),
  );
  const { title = job, site = '–' } = fold.state('book', 'book');
  return {
    job,
    title,
    site,
    made,
    tail,
    deviceKeys,
    rows: (from, limit) => store.rows(job, from, limit),
    // a head signed since would be of an entry that this file does not hold
    heads: (await Promise.all((await store.heads(job)).map(async (head) => ({ head, at: await store.placeOf(job, head.hash) }))))
      .filter(({ at }) => at !== undefined && at < tail.size)
      .map(({ head }) => head),
    attachmentSize: (hash) => store.attachments.size(job, hash),
    attachment: (hash) => store.attachments.read(job, hash),
  };
}

/** Kinds that tell what the job is called and which devices wrote in it. */
const HEADING: ReadonlySet<string> = new Set(['plan-issued', 'device-enrolled']);
