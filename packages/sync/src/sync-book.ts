import { type Notice, notice } from '@clampwright/core';
import {
  type Checkpoint,
  grow,
  type Kept,
  leafHash,
  type NoteKey,
  openCheckpoint,
  readHead,
  receiptBytes,
  rootOf,
  sameBytes,
  signHead,
  utf8,
} from '@clampwright/record';
import { LARGEST_BATCH_BYTES, MOST_ENTRIES, writeBatch } from './batch.ts';
import { type Chain, type Cursor, cursorBytes, type Device, read, rowsOf, stretchBytes, toJson } from './device.ts';
import { keyOf } from './keys.ts';
import { readPage } from './page.ts';
import type { KeyRange } from './shelf.ts';
import type { Answer, Transport } from './transport.ts';

/** How one sync of one book went. Whatever was reached is kept: the next goes on from there. */
export interface Synced {
  readonly pushed: number;
  readonly pulled: number;
  /** undefined when everything went through */
  readonly stopped?: { readonly why: 'unreachable' | 'refused' | 'log does not fit'; readonly notices: readonly Notice[] };
}

const PAGE = 1000;

/**
 * Brings a device and a server to the same book: what waits in the outbox goes up in signed batches, what is new in the log comes down
 * and is checked against the log's checkpoint. May be broken off anywhere and begun again.
 */
export async function syncBook(device: Device, job: string, transport: Transport, logKey: NoteKey): Promise<Synced> {
  const up = await push(device, job, transport);
  if (up.stopped) return { ...up, pulled: 0 };
  const down = await pull(device, job, transport, logKey);
  return { ...down, pushed: up.pushed };
}

const stop = (answer: Exclude<Answer<unknown>, { kind: 'answered' }>): NonNullable<Synced['stopped']> =>
  answer.kind === 'refused' ? { why: 'refused', notices: answer.notices } : { why: 'unreachable', notices: [] };

async function push(device: Device, job: string, transport: Transport): Promise<Omit<Synced, 'pulled'>> {
  for (const [key] of await device.shelf.scan(keyOf.unsent(job))) {
    const hash = key.slice(keyOf.unsent(job).length);
    const bytes = await device.shelf.get(keyOf.attachment(job, hash));
    const answer = bytes ? await transport.putAttachment(job, hash, bytes) : undefined;
    if (answer && answer.kind !== 'answered') return { pushed: 0, stopped: stop(answer) };
    await device.shelf.write({ remove: [key] });
  }
  for (let pushed = 0; ; ) {
    const { acknowledged } = await device.chain(job);
    const waiting = await device.shelf.scan(keyOf.outbox(job), { from: keyOf.waiting(job, acknowledged), limit: MOST_ENTRIES });
    const batch = firstOf(waiting.map(([, bytes]) => bytes));
    if (batch.length === 0) return { pushed };
    const entries = batch.map(read);
    const { sequence: first } = entries[0]!.entry;
    const { entry, hash } = entries.at(-1)!;
    const head = signHead({ job, device: device.id, sequence: entry.sequence, hash }, device.keys);
    const signedOff = await device.shelf.scan(keyOf.signed(job), { from: keyOf.signedHead(job, first) });
    const heads = signedOff
      .filter(([key]) => key <= keyOf.signedHead(job, entry.sequence))
      .flatMap(([, bytes]) => {
        const one = readHead(bytes);
        return one.ok && one.value.sequence !== entry.sequence ? [one.value] : [];
      });
    const answer = await transport.push(job, await writeBatch({ heads: [...heads, head], entries: batch }));
    if (answer.kind !== 'answered') {
      if (answer.kind === 'refused' && answer.notices.some(({ code }) => code === 'chain-has-a-gap') && (await offerAgain(device, job)))
        continue;
      return { pushed, stopped: stop(answer) };
    }
    const wrong = entries.findIndex((one, at) => answer.value[at]?.entry !== one.hash);
    if (wrong >= 0) {
      return {
        pushed,
        stopped: { why: 'refused', notices: [notice('receipt-of-another-entry', { index: answer.value[wrong]?.index ?? 0 })] },
      };
    }
    pushed += entries.length;
    await changeChain(device, job, (chain) => ({ ...chain, acknowledged: Math.max(chain.acknowledged, entry.sequence + 1) }));
  }
}

/** As many entries as fit one batch. */
function firstOf(entries: readonly Uint8Array[]): Uint8Array[] {
  let bytes = 0;
  return entries.filter(({ length }) => {
    bytes += length + 1;
    return bytes <= LARGEST_BATCH_BYTES;
  });
}

const changeChain = (device: Device, job: string, change: (chain: Chain) => Chain) =>
  device.alone(job, async () => {
    await device.shelf.write({ put: [[keyOf.chain(job), toJson(change(await device.chain(job)))]] });
  });

async function pull(device: Device, job: string, transport: Transport, logKey: NoteKey): Promise<Omit<Synced, 'pushed'>> {
  for (let pulled = 0; ; ) {
    const cursor = await device.cursor(job);
    const answer = await transport.pull(job, cursor.size, PAGE);
    if (answer.kind !== 'answered') return { pulled, stopped: stop(answer) };
    const page = readPage(answer.value);
    if (!page) return { pulled, stopped: { why: 'unreachable', notices: [] } };
    const checkpoint = openCheckpoint(page.checkpoint, logKey);
    if (!checkpoint.ok) return { pulled, stopped: { why: 'log does not fit', notices: checkpoint.notices } };
    const { size } = checkpoint.value;
    if (checkpoint.value.job !== job || size < cursor.size) {
      return { pulled, stopped: { why: 'log does not fit', notices: [notice('log-shorter-than-seen', { seen: cursor.size, size })] } };
    }
    const grown = page.rows.reduce<Cursor>((tree, { receipt }) => grow(tree, leafHash(receiptBytes(receipt))), cursor);
    const inOrder = page.rows.every(({ receipt }, at) => receipt.job === job && receipt.index === cursor.size + at);
    if (!inOrder || !fits(grown, checkpoint.value)) {
      return { pulled, stopped: { why: 'log does not fit', notices: [notice('log-differs-from-seen', { size })] } };
    }
    await keep(device, job, page.rows, {
      ...grown,
      checkpoint: grown.size === size ? page.checkpoint : (cursor.checkpoint ?? page.checkpoint),
    });
    pulled += page.rows.length;
    if (grown.size === size) return { pulled };
    if (page.rows.length === 0) return { pulled, stopped: { why: 'unreachable', notices: [] } };
  }
}

/** Only a log read to the checkpoint's size can be held against its root. */
const fits = (grown: Cursor, { size, root }: Checkpoint) => grown.size < size || (grown.size === size && sameBytes(rootOf(grown), root));

/** Puts a stretch of the log on the shelf, and takes what came back out of the outbox. */
const keep = (device: Device, job: string, rows: NonNullable<ReturnType<typeof readPage>>['rows'], cursor: Cursor) =>
  device.alone(job, async () => {
    const chain = await device.chain(job);
    const unseen = { ...chain.unseen };
    let { counter } = chain;
    for (const { kept } of rows) {
      counter = Math.max(counter, kept.entry.counter);
      if (kept.entry.device !== device.id) unseen[kept.entry.device] = kept.hash;
    }
    const remove = await cameBack(
      device,
      job,
      rows.map(({ kept }) => kept).filter(({ entry }) => entry.device === device.id),
    );
    await device.shelf.write({
      put: [
        ...(rows.length === 0 ? [] : [[keyOf.place(job, rows[0]!.receipt.index), stretchBytes(rows)] as const]),
        [keyOf.cursor(job), cursorBytes(cursor)],
        [keyOf.chain(job), toJson({ ...chain, counter, unseen } satisfies Chain)],
      ],
      remove,
    });
  });

/** What may leave the outbox: what waits as it came back in the log. A copied phone may have told another thing at the same place: that one stays. */
async function cameBack(device: Device, job: string, own: readonly Kept[]): Promise<(string | KeyRange)[]> {
  if (own.length === 0) return [];
  const places = own.map(({ entry }) => entry.sequence);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const within = { from: keyOf.waiting(job, first), limit: last - first + 1 };
  const waiting = new Map(await device.shelf.scan(keyOf.outbox(job), within));
  const alike = own.filter(({ entry, bytes }) => {
    const there = waiting.get(keyOf.waiting(job, entry.sequence));
    return there !== undefined && sameBytes(there, bytes);
  });
  // mostly a whole stretch comes back as it went
  if (alike.length === last - first + 1)
    return [
      { from: keyOf.waiting(job, first), to: keyOf.waiting(job, last) },
      { from: keyOf.signedHead(job, first), to: keyOf.signedHead(job, last) },
    ];
  return alike.flatMap(({ entry }) => [keyOf.waiting(job, entry.sequence), keyOf.signedHead(job, entry.sequence)]);
}

/** Puts what the device wrote itself, and had already seen in the log, back into its outbox; false where nothing was to be put back. */
const offerAgain = (device: Device, job: string): Promise<boolean> =>
  device.alone(job, async () => {
    const own = (await device.shelf.scan(keyOf.log(job)))
      .flatMap(([, bytes]) => rowsOf(bytes).map(({ kept }) => kept))
      .filter(({ entry }) => entry.device === device.id);
    const chain = await device.chain(job);
    if (own.length === 0 && chain.acknowledged === 0) return false;
    await device.shelf.write({
      put: [
        ...own.map(({ entry, bytes }) => [keyOf.waiting(job, entry.sequence), bytes] as const),
        [keyOf.chain(job), toJson({ ...chain, acknowledged: 0 } satisfies Chain)],
      ],
    });
    return true;
  });

/**
 * After a log that does not fit (the server was set back, or another stands in its place): keeps the last checkpoint as evidence, offers
 * everything of its own again, and reads the log from its beginning. A person decides this, not the device.
 */
export async function startOver(device: Device, job: string): Promise<void> {
  const cursor = await device.cursor(job);
  await offerAgain(device, job);
  await device.alone(job, async () => {
    const log = await device.shelf.scan(keyOf.log(job));
    await device.shelf.write({
      put: cursor.checkpoint === undefined ? [] : [[keyOf.evidence(job, cursor.size), utf8(cursor.checkpoint)]],
      remove: [...log.map(([key]) => key), keyOf.cursor(job)],
    });
  });
}
