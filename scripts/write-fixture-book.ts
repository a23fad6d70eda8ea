// Writes the book that the tests keep of the present format. Run once when a format is released, never again for that format:
//   node --import tsx scripts/write-fixture-book.ts packages/store/fixtures/format-N
import { rmSync } from 'node:fs';
import { rootOf } from '../packages/record/src/index.ts';
import { TEST_JOB } from '../packages/record/src/test-book.ts';
import { testBook } from '../packages/record/src/test-handover.ts';
import { openStore, writeBackup, writeFileWhole } from '../packages/store/src/index.ts';

const folder = process.argv[2]!;
const store = await openStore({ folder }, { now: () => new Date('2026-11-25T18:00:00.000Z') });
const book = testBook(2);
const entries = book.entries.slice(0, 60);
const kept = new Set<string>(entries.map(({ hash }) => hash));
await store.append(
  TEST_JOB,
  entries,
  book.heads.filter(({ hash }) => kept.has(hash)),
);
for (const [hash, bytes] of book.attachments)
  await store.attachments.put(
    TEST_JOB,
    hash,
    (async function* () {
      yield bytes;
    })(),
  );
await writeFileWhole(`${folder}.backup`, writeBackup(store, new Date('2026-11-25T18:00:00.000Z')));
console.log(`root ${Buffer.from(rootOf(await store.tail(TEST_JOB))).toString('hex')}`);
await store.close();
for (const name of ['writer.lock']) rmSync(`${folder}/${name}`, { force: true });
