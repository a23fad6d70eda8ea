import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  EMPTY_FRONTIER,
  grow,
  type HandoverSource,
  type Kept,
  leafHash,
  openFold,
  type Receipt,
  receiptBytes,
  verifyHandover,
  writeHandover,
} from '../packages/record/src/index.ts';
import { jointId, openingEntries, personId, TEST_JOB, TEST_STEPS, testSlice, testWriter } from '../packages/record/src/test-book.ts';
import { TEST_LOG } from '../packages/record/src/test-handover.ts';
import { fileSource, writeFileWhole } from '../packages/store/src/index.ts';

const BOLTS = 100;

/** So many entries of an invented job, the same every time: joints of a hundred bolts in two steps. */
function* entriesOf(count: number): Generator<Kept> {
  const [planner, phone] = [testWriter(1), testWriter(2)];
  const joints = Math.ceil(count / (BOLTS * TEST_STEPS.length));
  const opening = openingEntries(
    planner,
    [phone],
    Array.from({ length: joints }, (_, i) => testSlice(i + 1, BOLTS)),
  );
  yield* opening;
  const by = personId(2);
  let left = count - opening.length;
  for (let joint = 1; left > 0; joint += 1)
    for (const [at, step] of TEST_STEPS.entries())
      for (let bolt = 1; bolt <= BOLTS && left > 0; bolt += 1, left -= 1)
        yield phone.write(
          'bolt-tightened',
          { joint: jointId(joint), bolt, step, tool: 'SK-1', setting: `2/${at + 3}`, end: 'stall' },
          { by, ...(joint === 1 && bolt === 1 && at === 0 ? { seen: [opening.at(-1)!] } : {}) },
        );
}

export function foldBench(count = 1_000_000): void {
  const entries = [...entriesOf(count)];
  const began = performance.now();
  const fold = openFold();
  for (const one of entries) fold.add(one);
  for (const joint of fold.ids('joint')) fold.state('joint', joint);
  console.log(
    `fold of ${count} entries into ${fold.ids('joint').length} joints: ${((performance.now() - began) / 1000).toFixed(1)} s (wanted < 5 s)`,
  );
  const writer = testWriter(3);
  const times: number[] = [];
  for (let i = 0; i < 200; i += 1) {
    const one = writer.write('note-written', { text: 'x' });
    const again = writer.write('loosened', { joint: jointId(1 + (i % 20)), bolts: [1] }, { by: personId(2), seen: [entries.at(-1)!] });
    fold.add(one);
    const start = performance.now();
    fold.add(again);
    fold.state('joint', jointId(1 + (i % 20)));
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  console.log(
    `state of a joint of ${BOLTS} bolts after one new entry: ${times[100]!.toFixed(3)} ms, at most ${times.at(-1)!.toFixed(2)} ms (wanted < 1 ms)`,
  );
}

export async function verifyBench(count = 1_000_000): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-bench-'));
  const receiptOf = ({ hash }: Kept, index: number): Receipt => ({
    job: TEST_JOB,
    index,
    entry: hash,
    arrived: new Date(Date.UTC(2026, 10, 25) + index).toISOString(),
  });
  let tail = EMPTY_FRONTIER;
  let index = 0;
  for (const one of entriesOf(count)) {
    tail = grow(tail, leafHash(receiptBytes(receiptOf(one, index))));
    index += 1;
  }
  const rows = entriesOf(count);
  const [planner, phone] = [testWriter(1), testWriter(2)];
  const source: HandoverSource = {
    job: TEST_JOB,
    title: 'bench',
    site: 'yard',
    made: new Date(),
    tail,
    rows: async (from, limit) =>
      Array.from({ length: Math.min(limit, count - from) }, (_, i) => {
        const one = rows.next().value as Kept;
        return { receipt: receiptOf(one, from + i), bytes: one.bytes };
      }),
    heads: [],
    deviceKeys: [planner, phone].map(({ device, keys }) => ({ device, key: keys.publicKey })),
    attachmentSize: async () => undefined,
    async *attachment() {},
  };
  const path = join(folder, 'bench.handover');
  const bytes = await writeFileWhole(path, writeHandover(source, TEST_LOG));
  const file = await fileSource(path);
  let most = 0;
  const began = performance.now();
  const result = await verifyHandover(file, {
    progress: () => {
      most = Math.max(most, process.memoryUsage.rss());
    },
  });
  const seconds = (performance.now() - began) / 1000;
  console.log(
    `verify of ${count} entries, ${(bytes / 1e6).toFixed(0)} MB: ${seconds.toFixed(1)} s, at most ${(most / 2 ** 20).toFixed(0)} MiB, ${result.ok ? 'verified' : 'NOT VERIFIED'} (wanted < 60 s on one core, flat memory)`,
  );
  await file.close();
  rmSync(folder, { recursive: true });
}
