import {
  type ByteSource,
  bytesOf,
  checkSection,
  Misfit,
  type NotVerified,
  readCanonical,
  readEntry,
  readHead,
  readReceipt,
  readSections,
  readUtf8,
  type SignedHead,
} from '@clampwright/record';
import type { AccessRecord } from './access-records.ts';
import { BACKUP_LINE, MOST_SECTION_BYTES } from './backup.ts';
import { checkBook } from './check-book.ts';
import type { Row, Store } from './store.ts';

interface Restored {
  readonly books: readonly { readonly job: string; readonly size: number }[];
}
export type RestoreOutcome =
  | { readonly ok: true; readonly value: Restored }
  | { readonly ok: false; readonly why: string; readonly fault?: NotVerified };

/**
 * Puts a backup into an empty store, and then reads every book again: each must come out with the size and the root it was backed up
 * with. The whole file is held against its hashes before a single row is written.
 */
export async function restoreBackup(store: Store, source: ByteSource): Promise<RestoreOutcome> {
  if ((await store.books()).length > 0) return { ok: false, why: 'the store already holds books' };
  try {
    for await (const section of readSections(source, BACKUP_LINE)) {
      await checkSection(source, section);
      if (section.sealing !== undefined && textOf(await bytesOf(source, section)) !== section.sealing)
        return { ok: false, why: 'the seal is of other sections' };
    }
    const books = await putBack(store, source);
    for (const { job, size, root } of books) {
      const found = await checkBook(store, job);
      if (found.fault !== undefined) return { ok: false, why: `${job}: ${found.fault}` };
      if (found.size !== size || Buffer.from(found.root).toString('hex') !== root)
        return { ok: false, why: `${job} did not come back as it was` };
    }
    return { ok: true, value: { books: books.map(({ job, size }) => ({ job, size })) } };
  } catch (error) {
    if (error instanceof Misfit) return { ok: false, why: error.message, fault: { byte: error.byte, reason: error.reason } };
    throw error;
  }
}

async function putBack(store: Store, source: ByteSource): Promise<readonly { job: string; size: number; root: string }[]> {
  let books: readonly { job: string; size: number; root: string }[] = [];
  let job = '';
  for await (const section of readSections(source, BACKUP_LINE)) {
    const read = () => bytesOf(source, section, { most: 64 * MOST_SECTION_BYTES });
    if (section.name === 'store') {
      const value = readCanonical(await read());
      if (!value.ok) throw new Error('the first section of the backup cannot be read');
      books = (value.value as unknown as { books: typeof books }).books;
    } else if (section.name === 'book') job = textOf(await read());
    else if (section.name === 'entries') await store.restore(job, rowsOf(await read()), []);
    else if (section.name === 'heads') await store.restore(job, [], lines(await read()).map(headOf));
    else if (section.name === 'checkpoints')
      for (const line of lines(await read())) {
        const { size, note } = JSON.parse(textOf(line)) as { size: number; note: string };
        await store.putCheckpoint(job, size, note);
      }
    else if (section.name === 'attachment')
      await store.attachments.put(job, section.hash, piecesOf(source, section.bytesAt, section.length));
    else if (section.name === 'access')
      for (const line of lines(await read())) {
        const { job: book, kind, id, value } = JSON.parse(textOf(line)) as AccessRecord;
        await store.access.put(book, kind, id, JSON.parse(value));
      }
  }
  return books;
}

async function* piecesOf(source: ByteSource, at: number, length: number): AsyncGenerator<Uint8Array> {
  const piece = 1 << 20;
  for (let done = 0; done < length; done += piece) yield source.read(at + done, Math.min(piece, length - done));
}

function lines(bytes: Uint8Array): Uint8Array[] {
  const found: Uint8Array[] = [];
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0; end = bytes.indexOf(10, start)) {
    found.push(bytes.subarray(start, end));
    start = end + 1;
  }
  return found;
}

function rowsOf(bytes: Uint8Array): Row[] {
  const all = lines(bytes);
  return Array.from({ length: all.length / 2 }, (_, i) => {
    const [receipt, kept] = [readReceipt(all[2 * i]!), readEntry(all[2 * i + 1]!)];
    if (!receipt.ok || !kept.ok || kept.value.hash !== receipt.value.entry)
      throw new Error('an entry of the backup does not have its hash');
    return { receipt: receipt.value, bytes: all[2 * i + 1]! };
  });
}

function headOf(line: Uint8Array): SignedHead {
  const head = readHead(line);
  if (!head.ok) throw new Error('a signed head of the backup cannot be read');
  return head.value;
}

const textOf = (bytes: Uint8Array) => readUtf8(bytes) ?? '';
