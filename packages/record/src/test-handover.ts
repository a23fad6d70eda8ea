import { hashOf } from './bytes/hash.ts';
import type { KeyPair } from './bytes/keys.ts';
import { joinBytes, utf8 } from './bytes/text.ts';
import type { SignedHead } from './chain/head.ts';
import { type Receipt, receiptBytes } from './chain/receipt.ts';
import type { Kept } from './entry/envelope.ts';
import { type HandoverSource, writeHandover } from './handover/write.ts';
import { EMPTY_FRONTIER, type Frontier, grow, leafHash } from './merkle/tree.ts';
import { jointId, openingEntries, personId, TEST_JOB, TEST_STEPS, testKeys, testSlice, testWriter } from './test-book.ts';

// Handover files of an invented job, for tests and the torture run.

export const TEST_LOG = { name: 'skerrow', keys: testKeys(99) };
const PHOTO = Uint8Array.from({ length: 3000 }, (_, i) => (i * i) & 255);

export interface TestBook {
  readonly entries: readonly Kept[];
  readonly heads: readonly SignedHead[];
  readonly keys: readonly { readonly device: string; readonly key: Uint8Array }[];
  readonly attachments: ReadonlyMap<string, Uint8Array>;
}

/** A planner and three phones on `joints` joints of twelve bolts; one phone was copied and both went on. */
export function testBook(joints = 2, { copied = true, bolts = 12 } = {}): TestBook {
  const planner = testWriter(1);
  const phones = [testWriter(2), testWriter(3), testWriter(4)];
  const slices = Array.from({ length: joints }, (_, i) => testSlice(i + 1, bolts));
  const entries = openingEntries(planner, phones, slices);
  const heads: SignedHead[] = [planner.head()];
  const by = personId(2);
  const issued = entries.at(-1)!;
  for (let joint = 0; joint < joints; joint += 1) {
    const phone = phones[joint % 2]!;
    for (const [i, step] of TEST_STEPS.entries())
      for (let bolt = 1; bolt <= bolts; bolt += 1)
        entries.push(
          phone.write(
            'bolt-tightened',
            { joint: jointId(joint + 1), bolt, step, tool: 'SK-1', setting: `2/${i + 3}`, end: 'stall' },
            { by, seen: [issued] },
          ),
        );
    entries.push(phone.write('joint-signed', { joint: jointId(joint + 1), as: 'crew' }, { by }));
    heads.push(phone.head());
  }
  const last = phones[2]!;
  entries.push(last.write('photo-taken', { joint: jointId(1), photo: hashOf(PHOTO), type: 'image/jpeg' }, { by }));
  if (copied) {
    const copy = last.clone();
    entries.push(last.write('note-written', { text: 'seaward side wet' }, { by }), last.write('note-written', { text: 'dried' }, { by }));
    heads.push(last.head());
    entries.push(copy.write('note-written', { text: 'never wet' }, { by }));
    heads.push(copy.head());
    entries.push(copy.write('note-written', { text: 'unsigned' }, { by }));
  }
  return {
    entries,
    heads,
    keys: [planner, ...phones].map(({ device, keys }) => ({ device, key: keys.publicKey })),
    attachments: new Map([PHOTO, utf8('crew')].map((bytes) => [hashOf(bytes), bytes])),
  };
}

/** The log of a book as a server would have ordered it. */
export function testLog(
  { entries }: TestBook,
  job = TEST_JOB,
): { readonly rows: readonly { receipt: Receipt; bytes: Uint8Array }[]; readonly tail: Frontier } {
  const rows = entries.map(({ hash, bytes }, index) => ({
    receipt: { job, index, entry: hash, arrived: new Date(Date.UTC(2026, 10, 25, 12) + index * 10).toISOString() },
    bytes,
  }));
  return { rows, tail: rows.reduce<Frontier>((tree, { receipt }) => grow(tree, leafHash(receiptBytes(receipt))), EMPTY_FRONTIER) };
}

export function testSource(book: TestBook, change: Partial<HandoverSource> = {}): HandoverSource {
  const { rows, tail } = testLog(book);
  return {
    job: TEST_JOB,
    title: 'Skerrow Sound, spring outage',
    site: 'Skerrow Sound tidal yard',
    made: new Date('2026-11-26T00:00:00.000Z'),
    tail,
    rows: async (from, limit) => rows.slice(from, from + limit),
    heads: book.heads,
    deviceKeys: book.keys,
    attachmentSize: async (hash) => book.attachments.get(hash)?.length,
    async *attachment(hash) {
      yield book.attachments.get(hash)!;
    },
    ...change,
  };
}

export async function handoverBytes(source: HandoverSource, log: { name: string; keys: KeyPair } = TEST_LOG): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of writeHandover(source, log)) parts.push(part);
  return joinBytes(...parts);
}
