import { createHash, randomBytes } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

const PART_BYTES = 256 * 1024;

/** Files beside the log, under their hash: photos, plans, cards, names. They may be erased; the hash in the log stays. */
export interface Attachments {
  /** Streams it in; false where the bytes are not those of the hash, and then nothing is kept. */
  readonly put: (job: string, hash: string, bytes: AsyncIterable<Uint8Array>) => Promise<boolean>;
  readonly size: (job: string, hash: string) => Promise<number | undefined>;
  readonly read: (job: string, hash: string) => AsyncGenerator<Uint8Array>;
  readonly list: (job: string) => Promise<readonly { readonly hash: string; readonly size: number }[]>;
  readonly erase: (job: string, hash: string) => Promise<void>;
}

export function attachmentsOf(db: Kysely<Tables>): Attachments {
  const uploadOf = (job: string, hash: string) =>
    db
      .selectFrom('attachment')
      .select(['upload', 'size'])
      .where('job', '=', job)
      .where('hash', '=', Buffer.from(hash, 'hex'))
      .executeTakeFirst();
  const drop = (job: string, hash: Buffer, upload: string) =>
    db.deleteFrom('attachment_part').where('job', '=', job).where('hash', '=', hash).where('upload', '=', upload).execute();

  return {
    size: async (job, hash) => (await uploadOf(job, hash))?.size,
    list: async (job) =>
      (await db.selectFrom('attachment').select(['hash', 'size']).where('job', '=', job).orderBy('hash').execute()).map(
        ({ hash, size }) => ({
          hash: hash.toString('hex'),
          size,
        }),
      ),
    put: async (job, name, bytes) => {
      if (await uploadOf(job, name)) return true;
      const hash = Buffer.from(name, 'hex');
      const upload = randomBytes(9).toString('base64url');
      const digest = createHash('sha256');
      let [part, size] = [0, 0];
      try {
        for await (const piece of inParts(bytes)) {
          digest.update(piece);
          size += piece.length;
          await db.insertInto('attachment_part').values({ job, hash, upload, part, bytes: piece }).execute();
          part += 1;
        }
      } catch (error) {
        await drop(job, hash, upload).catch(() => undefined);
        throw error;
      }
      if (!digest.digest().equals(hash)) {
        await drop(job, hash, upload);
        return false;
      }
      await db
        .insertInto('attachment')
        .values({ job, hash, upload, size })
        .onConflict((conflict) => conflict.columns(['job', 'hash']).doNothing())
        .execute();
      // somebody else may have finished the same file first
      if ((await uploadOf(job, name))?.upload !== upload) await drop(job, hash, upload);
      return true;
    },
    async *read(job, name) {
      const known = await uploadOf(job, name);
      if (!known) return;
      const parts = Math.ceil(known.size / PART_BYTES);
      for (let part = 0; part < parts; part += 1) {
        const row = await db
          .selectFrom('attachment_part')
          .select('bytes')
          .where('job', '=', job)
          .where('hash', '=', Buffer.from(name, 'hex'))
          .where('upload', '=', known.upload)
          .where('part', '=', part)
          .executeTakeFirst();
        if (!row) throw new Error(`attachment ${name} is not whole`);
        yield new Uint8Array(row.bytes);
      }
    },
    erase: async (job, name) => {
      const hash = Buffer.from(name, 'hex');
      await db.transaction().execute(async (transaction) => {
        await transaction.deleteFrom('attachment').where('job', '=', job).where('hash', '=', hash).execute();
        await transaction.deleteFrom('attachment_part').where('job', '=', job).where('hash', '=', hash).execute();
      });
    },
  };
}

/** The same bytes in pieces of one size. */
async function* inParts(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Buffer> {
  let [held, length]: [Uint8Array[], number] = [[], 0];
  for await (const piece of bytes) {
    held.push(piece);
    length += piece.length;
    while (length >= PART_BYTES) {
      const all = Buffer.concat(held);
      yield all.subarray(0, PART_BYTES);
      held = [all.subarray(PART_BYTES)];
      length -= PART_BYTES;
    }
  }
  if (length > 0) yield Buffer.concat(held);
}
