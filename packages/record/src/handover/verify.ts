import { type Notice, notice, type Outcome } from '@clampwright/core';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { readCanonical } from '../bytes/canonical.ts';
import { type Hash, hashOf } from '../bytes/hash.ts';
import { deviceIdOf } from '../bytes/id.ts';
import { readUtf8, sameBytes } from '../bytes/text.ts';
import { checkHead, readHead } from '../chain/head.ts';
import { readReceipt, receiptBytes } from '../chain/receipt.ts';
import { type ByteSource, bytesOf, checkSection, Misfit, type ReadSection, readSections } from '../container/read.ts';
import { readEntry } from '../entry/envelope.ts';
import type { z } from '../entry/field.ts';
import { type Checkpoint, type NoteKey, noteKeyText, openCheckpoint, openNote, readNoteKey } from '../merkle/checkpoint.ts';
import { EMPTY_FRONTIER, type Frontier, grow, leafHash, rootOf } from '../merkle/tree.ts';
import { type ChainCheck, openChainCheck } from './chain-check.ts';
import { about, HANDOVER_LINE, keys, MOST_SECTION_BYTES, missing, namedBy, SECTION_ORDER } from './format.ts';

export interface VerifyOptions {
  /** a checkpoint of the same log that was seen elsewhere: the file must continue it */
  readonly seen?: string;
  /** the log's key as it was told elsewhere; without it the file's own word is taken for it */
  readonly key?: string;
  readonly progress?: (done: number, of: number) => void;
}

/** What a file holds that fits in every byte. */
export interface Verified {
  readonly job: string;
  readonly title: string;
  readonly site: string;
  readonly made: string;
  readonly size: number;
  readonly root: string;
  readonly checkpoint: string;
  readonly logKey: string;
  readonly devices: readonly { readonly device: string; readonly entries: number; readonly unsigned: number; readonly forked: boolean }[];
  readonly attachments: number;
  readonly missing: readonly string[];
  readonly report: boolean;
  /** of the report's bytes */
  readonly reportHash?: string;
  readonly seen?: number;
}

/** The first byte that does not fit, and why. */
export interface NotVerified {
  readonly byte: number;
  readonly reason: Notice;
}

/**
 * Verifies a handover file: needs no server, no network and nothing of the code that wrote it but the formats. Reads it once from the
 * beginning (a second time where a device was copied); memory does not grow with the number of entries.
 */
export async function verifyHandover(
  source: ByteSource,
  options: VerifyOptions = {},
): Promise<{ readonly ok: true; readonly value: Verified } | { readonly ok: false; readonly fault: NotVerified }> {
  try {
    return { ok: true, value: await verify(source, options) };
  } catch (error) {
    if (error instanceof Misfit) return { ok: false, fault: { byte: error.byte, reason: error.reason } };
    throw error;
  }
}

interface Progress {
  frontier: Frontier;
  arrived: string;
  seenRoot?: Uint8Array;
  readonly chains: ChainCheck;
  readonly named: Set<string>;
  readonly held: Set<string>;
}

async function verify(source: ByteSource, { seen, key: toldKey, progress }: VerifyOptions): Promise<Verified> {
  const sections = readSections(source, HANDOVER_LINE);
  const next = async (name: string): Promise<ReadSection> => {
    const { value } = await sections.next();
    if (value?.name !== name) throw new Misfit(value?.at ?? source.size, notice('file-section-missing', { section: name }));
    return value;
  };

  const aboutAt = await next('about');
  const told = readJson(await bytesOf(source, aboutAt, { most: MOST_SECTION_BYTES }), about, aboutAt);
  const keysAt = await next('keys');
  const { log, devices } = readJson(await bytesOf(source, keysAt, { most: 64 * MOST_SECTION_BYTES }), keys, keysAt);
  const logKey = fitting(readNoteKey(log), keysAt.bytesAt);
  if (toldKey !== undefined && toldKey.trim() !== noteKeyText(logKey)) throw new Misfit(keysAt.bytesAt, notice('key-of-another-log', {}));
  const deviceKeys = new Map(devices.map(({ device, key }) => [device, hexToBytes(key)]));
  for (const [device, key] of deviceKeys)
    if (deviceIdOf(key) !== device) throw new Misfit(keysAt.bytesAt, notice('key-of-another-device', { device }));

  const checkpointAt = await next('checkpoint');
  const note = textOf(await bytesOf(source, checkpointAt, { most: 4096 }), checkpointAt.bytesAt);
  const checkpoint = fitting(openCheckpoint(note, logKey), checkpointAt.bytesAt);
  if (checkpoint.job !== told.job) throw new Misfit(checkpointAt.bytesAt, notice('entry-of-another-book', { job: checkpoint.job }));
  if (checkpoint.size !== told.size)
    throw new Misfit(checkpointAt.bytesAt, notice('file-size-differs', { said: told.size, found: checkpoint.size }));
  const seenCheckpoint = seen === undefined ? undefined : readSeen(seen, logKey, checkpoint, checkpointAt.bytesAt);

  const state: Progress = { frontier: EMPTY_FRONTIER, arrived: '', chains: openChainCheck(), named: new Set(), held: new Set() };
  if (seenCheckpoint?.size === 0) state.seenRoot = rootOf(EMPTY_FRONTIER);
  let stage = SECTION_ORDER.indexOf('checkpoint');
  let report: string | undefined;
  let absent: readonly string[] | undefined;
  let sealedAt: ReadSection | undefined;

  for await (const section of sections) {
    const place = (SECTION_ORDER as readonly string[]).indexOf(section.name);
    const again = place === stage && (section.name === 'heads' || section.name === 'entries' || section.name === 'attachment');
    if (place < 0 || !(place > stage || again))
      throw new Misfit(section.at, notice('file-section-out-of-place', { section: section.name }));
    if (stage <= SECTION_ORDER.indexOf('entries') && place > SECTION_ORDER.indexOf('entries')) closeEntries(state, checkpoint, section.at);
    stage = place;
    if (section.name === 'heads') await takeHeads(source, section, state, deviceKeys, told.job);
    else if (section.name === 'entries') await takeEntries(source, section, state, deviceKeys, told.job, seenCheckpoint, checkpoint);
    else if (section.name === 'attachment') {
      if (!state.named.has(section.hash)) throw new Misfit(section.at, notice('file-attachment-not-named', { hash: section.hash }));
      if (state.held.has(section.hash)) throw new Misfit(section.at, notice('file-section-out-of-place', { section: section.name }));
      await checkSection(source, section);
      state.held.add(section.hash);
    } else if (section.name === 'report') {
      await checkSection(source, section);
      report = section.hash;
    } else if (section.name === 'missing') {
      absent = readJson(await bytesOf(source, section, { most: 64 * MOST_SECTION_BYTES }), missing, section).attachments;
      const expected = [...state.named].filter((hash) => !state.held.has(hash)).sort();
      if (expected.length !== absent.length || expected.some((hash, at) => hash !== absent![at]))
        throw new Misfit(section.bytesAt, notice('file-attachments-differ', {}));
    } else sealedAt = section;
    progress?.(section.bytesAt + section.length, source.size);
  }

  if (absent === undefined) throw new Misfit(sealedAt?.at ?? source.size, notice('file-section-missing', { section: 'missing' }));
  const sealedText = fitting(
    openNote(textOf(await bytesOf(source, sealedAt!, { most: 4096 }), sealedAt!.bytesAt), logKey),
    sealedAt!.bytesAt,
  );
  if (sealedText !== sealedAt!.sealing) throw new Misfit(sealedAt!.bytesAt, notice('file-seal-differs', {}));
  await findParents(source, state.chains);

  return {
    job: told.job,
    title: told.title,
    site: told.site,
    made: told.made,
    size: checkpoint.size,
    root: bytesToHex(checkpoint.root),
    checkpoint: note,
    logKey: noteKeyText(logKey),
    devices: state.chains.devices(),
    attachments: state.held.size,
    missing: absent,
    report: report !== undefined,
    ...(report === undefined ? {} : { reportHash: report }),
    ...(seenCheckpoint ? { seen: seenCheckpoint.size } : {}),
  };
}

function readSeen(text: string, logKey: NoteKey, { job, size }: Checkpoint, at: number): Checkpoint {
  const seen = fitting(openCheckpoint(text, logKey), at);
  if (seen.job !== job) throw new Misfit(at, notice('entry-of-another-book', { job: seen.job }));
  if (seen.size > size) throw new Misfit(at, notice('log-shorter-than-seen', { seen: seen.size, size }));
  return seen;
}

async function takeHeads(
  source: ByteSource,
  section: ReadSection,
  { chains }: Progress,
  keyOf: ReadonlyMap<string, Uint8Array>,
  job: string,
) {
  const check = (bytes: Uint8Array) => {
    for (const { at, line } of linesIn(bytes, section.bytesAt)) {
      const head = fitting(readHead(line), at);
      if (head.job !== job) throw new Misfit(at, notice('entry-of-another-book', { job: head.job }));
      const key = keyOf.get(head.device);
      if (!key) throw new Misfit(at, notice('file-device-without-key', { device: head.device }));
      fitting(checkHead(head, key), at);
      chains.head(head, at);
    }
  };
  check(await bytesOf(source, section, { most: MOST_SECTION_BYTES, refine: check }));
}

async function takeEntries(
  source: ByteSource,
  section: ReadSection,
  state: Progress,
  keyOf: ReadonlyMap<string, Uint8Array>,
  job: string,
  seen: Checkpoint | undefined,
  checkpoint: Checkpoint,
) {
  const check = (bytes: Uint8Array) => {
    const lines = linesIn(bytes, section.bytesAt);
    for (let i = 0; i < lines.length; i += 2) {
      const [first, second] = [lines[i]!, lines[i + 1]];
      if (!second) throw new Misfit(first.at, notice('file-line-malformed', {}));
      const receipt = fitting(readReceipt(first.line), first.at);
      const index = state.frontier.size;
      if (receipt.job !== job) throw new Misfit(first.at, notice('entry-of-another-book', { job: receipt.job }));
      if (receipt.index !== index || index >= checkpoint.size)
        throw new Misfit(first.at, notice('receipt-out-of-place', { said: receipt.index, found: index }));
      if (receipt.arrived < state.arrived) throw new Misfit(first.at, notice('receipt-before-last', { index }));
      if (hashOf(second.line) !== receipt.entry) throw new Misfit(second.at, notice('receipt-of-another-entry', { index }));
      const { entry } = fitting(readEntry(second.line), second.at);
      if (entry.job !== job) throw new Misfit(second.at, notice('entry-of-another-book', { job: entry.job }));
      if (!keyOf.has(entry.device)) throw new Misfit(second.at, notice('file-device-without-key', { device: entry.device }));
      const broken = state.chains.entry(entry, receipt.entry as Hash, second.at);
      if (broken) throw new Misfit(second.at, broken);
      for (const hash of namedBy(entry)) state.named.add(hash);
      state.frontier = grow(state.frontier, leafHash(receiptBytes(receipt)));
      state.arrived = receipt.arrived;
      if (seen?.size === state.frontier.size) {
        if (!sameBytes(rootOf(state.frontier), seen.root)) throw new Misfit(first.at, notice('log-differs-from-seen', { size: seen.size }));
        state.seenRoot = seen.root;
      }
    }
  };
  // the entries themselves say more exactly than the section's hash where something does not fit
  check(await bytesOf(source, section, { most: MOST_SECTION_BYTES + 1, refine: check }));
}

function closeEntries({ frontier, chains }: Progress, checkpoint: Checkpoint, at: number): void {
  if (frontier.size !== checkpoint.size) throw new Misfit(at, notice('file-size-differs', { said: checkpoint.size, found: frontier.size }));
  if (!sameBytes(rootOf(frontier), checkpoint.root)) throw new Misfit(at, notice('file-root-differs', { size: checkpoint.size }));
  const unmatched = chains.unmatchedHead();
  if (unmatched)
    throw new Misfit(unmatched.at, notice('file-head-of-no-entry', { device: unmatched.device, sequence: unmatched.sequence }));
}

/** Where a device was copied, entries may follow on one that is long past: those are looked up in a second reading. */
async function findParents(source: ByteSource, chains: ChainCheck): Promise<void> {
  if (chains.pending().size === 0) return;
  for await (const section of readSections(source, HANDOVER_LINE)) {
    if (section.name !== 'entries') continue;
    const lines = linesIn(await bytesOf(source, section, { most: MOST_SECTION_BYTES + 1 }), section.bytesAt);
    for (let i = 1; i < lines.length; i += 2) {
      const { at, line } = lines[i]!;
      const kept = fitting(readEntry(line), at);
      chains.parent(kept.entry, kept.hash, at);
    }
  }
  for (const { at, device, sequence } of chains.pending().values()) throw new Misfit(at, notice('chain-has-a-gap', { device, sequence }));
}

function linesIn(bytes: Uint8Array, offset: number): { readonly at: number; readonly line: Uint8Array }[] {
  const lines: { at: number; line: Uint8Array }[] = [];
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0; end = bytes.indexOf(10, start)) {
    lines.push({ at: offset + start, line: bytes.subarray(start, end) });
    start = end + 1;
  }
  if (start < bytes.length) throw new Misfit(offset + start, notice('file-line-malformed', {}));
  return lines;
}

function fitting<T>(outcome: Outcome<T>, at: number): T {
  if (outcome.ok) return outcome.value;
  throw new Misfit(at, outcome.notices[0]!);
}

function textOf(bytes: Uint8Array, at: number): string {
  const text = readUtf8(bytes);
  if (text === undefined) throw new Misfit(at, notice('not-canonical', { why: 'not UTF-8' }));
  return text;
}

function readJson<T>(bytes: Uint8Array, schema: z.ZodMiniType<T>, { bytesAt, name }: ReadSection): T {
  const read = schema.safeParse(fitting(readCanonical(bytes), bytesAt));
  if (!read.success)
    throw new Misfit(bytesAt, notice('file-section-malformed', { section: name, field: read.error.issues[0]!.path.join('.') || name }));
  return read.data;
}
