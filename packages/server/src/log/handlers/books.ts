import { randomBytes } from 'node:crypto';
import { done, notice, refused } from '@clampwright/core';
import type { PaperOptions } from '@clampwright/papers/out';
import { idOf, receiptBytes } from '@clampwright/record';
import { acceptBatch, linesOf, readBatch, writePage } from '@clampwright/sync';
import { LANGUAGES, type Language, loadWords } from '@clampwright/words';
import { putAccount } from '../accounts.ts';
import { SERVER } from '../log-key.ts';
import { MOST_REPORTED, makeHandover, makeReport } from '../make-handover.ts';
import { organisationOf } from '../organisation.ts';
import { knowsBook } from '../principal.ts';
import type { Handlers } from './handler.ts';
import { plain } from './plain.ts';

interface BookRecord {
  readonly title: string;
}
const base64 = (hashes: readonly Uint8Array[]) => ({ proof: hashes.map((hash) => Buffer.from(hash).toString('base64')) });

export const bookHandlers = {
  addBook: async ({ body: { title } }, { context: { store }, who }) => {
    const job = idOf('job', randomBytes(16));
    await store.access.put(SERVER, 'book', job, { title } satisfies BookRecord);
    if (who.kind === 'person' && who.account.books !== 'all')
      await putAccount(store, { ...who.account, books: [...who.account.books, job] });
    return done({ job, title });
  },
  books: async (_, { context: { store, yard }, who }) => {
    const titles = new Map((await store.access.list<BookRecord>(SERVER, 'book')).map(({ id, value }) => [id, value.title]));
    const sizes = new Map((await store.books()).map(({ job, size }) => [job, size]));
    titles.set(yard.id, yard.name);
    const known = [...new Set([...titles.keys(), ...sizes.keys()])].filter((job) => knowsBook(who, job, yard.id)).sort();
    return done({ books: known.map((job) => ({ job, title: titles.get(job) ?? job, size: sizes.get(job) ?? 0 })) });
  },
  pushBatch: async ({ params: { job }, body }, { context: { store, live, metrics }, who }) => {
    if (who.kind !== 'device') throw new Error('the table of access lets nobody else in');
    const batch = await readBatch(body);
    if (!batch.ok) return batch;
    const device = batch.value.heads[0]!.device;
    if (device !== who.id) return refused(notice('key-of-another-device', { device }));
    const taken = await acceptBatch(store, job, batch.value, new Uint8Array(Buffer.from(who.record.key, 'hex')));
    if (!taken.ok) return taken;
    metrics.appended(taken.value.length);
    live.tell(
      job,
      taken.value.reduce((most, { index }) => Math.max(most, index + 1), 0),
    );
    return done(linesOf(taken.value.map(receiptBytes)));
  },
  entries: async ({ params: { job }, query: { from, limit } }, { context: { store, checkpoints } }) => {
    const { size, note } = await checkpoints(job);
    const rows = from < size ? await store.rows(job, from, Math.min(limit, size - from)) : [];
    return done(writePage({ checkpoint: note, rows }));
  },
  checkpoint: async ({ params: { job } }, { context: { checkpoints } }) => done({ checkpoint: (await checkpoints(job)).note }),
  inclusion: async ({ params: { job }, query: { index, size } }, { context: { store } }) => {
    const tail = await store.tail(job);
    if (size > tail.size || index >= size) return refused(notice('log-smaller-than-asked', { size: tail.size }));
    return done(base64(await store.inclusion(job, index, size)));
  },
  consistency: async ({ params: { job }, query: { first, second } }, { context: { store } }) => {
    const tail = await store.tail(job);
    if (second > tail.size || first > second || first === 0) return refused(notice('log-smaller-than-asked', { size: tail.size }));
    return done(base64(await store.consistency(job, first, second)));
  },
  state: async ({ params: { job } }, { context: { states } }) => {
    const { fold, size } = await states(job);
    const joints = fold.ids('joint').map((id) => {
      const { joint, tag, plan, bolts, found, signatures, progress } = fold.state('joint', id);
      const left = Object.fromEntries([...progress].map(([step, { open }]) => [step, open.size]));
      return plain({ joint, tag, bolts: plan?.slice.bolts ?? bolts.size, open: left, found: found.length, signed: signatures.length });
    });
    return done({
      size,
      book: plain(fold.state('book', 'book')),
      joints,
      tools: fold.ids('tool').map((id) => plain(fold.state('tool', id))),
      batteries: fold.ids('battery').map((id) => plain(fold.state('battery', id))),
    });
  },
  joint: async ({ params: { job, joint } }, { context: { states } }) => {
    const { fold } = await states(job);
    return fold.ids('joint').includes(joint) ? done(plain(fold.state('joint', joint))) : refused(notice('not-found', {}));
  },
  nonconformances: async ({ params: { job } }, { context: { states } }) =>
    done({ nonconformances: (await states(job)).fold.nonconformances().map(plain) }),
  events: async ({ params: { job } }, { context: { live, store, stopping }, request }) =>
    done(
      sizes(
        job,
        (await store.tail(job)).size,
        (listener) => live.listen(job, listener),
        AbortSignal.any([request.signal, stopping.signal]),
      ),
    ),
  handover: async ({ params: { job } }, { context: { store, now, checkpoints, organisation }, header }) => {
    const { size, note } = await checkpoints(job);
    if (size === 0) return refused(notice('not-found', {}));
    const made = now();
    const whose = await organisationOf(store, organisation);
    const bytes = await makeHandover(store, job, { made, paper: whose ? { organisation: whose } : {} });
    if (!bytes) return refused(notice('not-found', {}));
    await store.putCheckpoint(job, size, note);
    header('Content-Disposition', `attachment; filename="${job}.handover"`);
    return done(bytes);
  },
  report: async ({ params: { job, languages } }, { context: { store, now, organisation }, header }) => {
    const spoken = await wordsFor(languages);
    const { size } = await store.tail(job);
    if (!spoken || size === 0) return refused(notice('not-found', {}));
    if (size > MOST_REPORTED) return refused(notice('report-too-long', { size, most: MOST_REPORTED }));
    const whose = await organisationOf(store, organisation);
    const bytes = await makeReport(store, job, { made: now(), paper: { languages: spoken, ...(whose ? { organisation: whose } : {}) } });
    if (!bytes) return refused(notice('not-found', {}));
    header('Content-Type', 'application/pdf');
    header('Content-Disposition', `attachment; filename="${job}.pdf"`);
    return done(bytes);
  },
} satisfies Partial<Handlers>;

/** `de`, or `de-pl`: the second beneath the first; undefined where one of them is not spoken. */
async function wordsFor(languages: string): Promise<NonNullable<PaperOptions['languages']> | undefined> {
  const [first, second] = languages.split('-');
  const isSpoken = (code: string | undefined): code is Language => code !== undefined && Object.hasOwn(LANGUAGES, code);
  if (!isSpoken(first) || (second !== undefined && !isSpoken(second))) return undefined;
  return second === undefined || second === first ? [await loadWords(first)] : [await loadWords(first), await loadWords(second)];
}

const HEARTBEAT_MS = 15_000;

/** Server-sent events: the size at once, then whenever it grows; a comment now and then keeps the way open. */
async function* sizes(
  job: string,
  first: number,
  listen: (listener: (size: number) => void) => () => void,
  signal: AbortSignal,
): AsyncGenerator<Uint8Array> {
  const text = new TextEncoder();
  let wake = () => {};
  let latest = first;
  let sent = -1;
  const stop = listen((size) => {
    latest = Math.max(latest, size);
    wake();
  });
  const onAbort = () => wake();
  signal.addEventListener('abort', onAbort);
  try {
    while (!signal.aborted) {
      if (latest > sent) {
        sent = latest;
        yield text.encode(`event: size\ndata: ${JSON.stringify({ job, size: sent })}\n\n`);
        continue;
      }
      const slept = await new Promise<boolean>((resolve) => {
        const timer = setTimeout(() => resolve(true), HEARTBEAT_MS);
        wake = () => {
          clearTimeout(timer);
          resolve(false);
        };
      });
      if (slept) yield text.encode(': still here\n\n');
    }
  } finally {
    signal.removeEventListener('abort', onAbort);
    stop();
  }
}
