import { type Notice, notice } from '@clampwright/core';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { base64 } from '@scure/base';
import { type Hash, hashOf, isHash } from '../bytes/hash.ts';
import { readUtf8, utf8 } from '../bytes/text.ts';

/** A file, a blob of the browser, or bytes in memory. */
export interface ByteSource {
  readonly size: number;
  readonly read: (offset: number, length: number) => Promise<Uint8Array>;
}

export const bytesSource = (bytes: Uint8Array): ByteSource => ({
  size: bytes.length,
  read: async (offset, length) => bytes.subarray(offset, offset + length),
});

/** Where a file stops fitting, and why. Caught where the reading began; to callers it is a value. */
export class Misfit extends Error {
  constructor(
    readonly byte: number,
    readonly reason: Notice,
  ) {
    super(`byte ${byte}: ${reason.code}`);
  }
}

export interface ReadSection {
  readonly name: string;
  /** offset of its line, and of its bytes */
  readonly at: number;
  readonly bytesAt: number;
  readonly length: number;
  readonly hash: Hash;
  /** of a seal: the text that it has to seal */
  readonly sealing?: string;
}

const LONGEST_LINE = 200;
const LINE = /^([a-z][a-z-]{0,30}) (0|[1-9]\d{0,14}) ([0-9a-f]{64})$/;
const NEWLINE = 10;

/** The sections of a file in their order, up to the seal, which must be its end. The bytes of a section are read by whoever wants them. */
export async function* readSections(source: ByteSource, firstLine: string): AsyncGenerator<ReadSection> {
  const first = await lineAt(source, 0);
  if (first !== firstLine) throw new Misfit(0, notice('file-of-another-kind', { wanted: firstLine }));
  const lines = sha256.create();
  let count = 0;
  for (let at = firstLine.length + 1; ; ) {
    const line = await lineAt(source, at);
    const parts = line === undefined ? null : LINE.exec(line);
    if (line === undefined || !parts || !isHash(parts[3]!)) throw new Misfit(at, notice('file-line-malformed', {}));
    const [name, length] = [parts[1]!, Number(parts[2])];
    const bytesAt = at + line.length + 1;
    const end = bytesAt + length;
    if (end + 1 > source.size) throw new Misfit(source.size, notice('file-cut-short', { wanted: end + 1 }));
    if ((await source.read(end, 1))[0] !== NEWLINE) throw new Misfit(end, notice('file-line-malformed', {}));
    const section = { name, at, bytesAt, length, hash: parts[3] };
    if (name === 'seal') {
      if (end + 1 !== source.size) throw new Misfit(end + 1, notice('file-goes-on', {}));
      yield { ...section, sealing: `${firstLine}\n${count}\n${base64.encode(lines.digest())}\n` };
      return;
    }
    lines.update(utf8(`${line}\n`));
    count += 1;
    yield section;
    at = end + 1;
  }
}

async function lineAt(source: ByteSource, at: number): Promise<string | undefined> {
  const bytes = await source.read(at, Math.min(LONGEST_LINE, source.size - at));
  const end = bytes.indexOf(NEWLINE);
  return end < 0 ? undefined : readUtf8(bytes.subarray(0, end));
}

/** The bytes of a section, which must have its hash; `refine` may name a place inside that is nearer to the fault. */
export async function bytesOf(
  source: ByteSource,
  section: ReadSection,
  { most = Number.POSITIVE_INFINITY, refine }: { readonly most?: number; readonly refine?: (bytes: Uint8Array) => void } = {},
): Promise<Uint8Array> {
  if (section.length > most) throw new Misfit(section.at, notice('file-section-too-long', { bytes: section.length, limit: most }));
  const bytes = await source.read(section.bytesAt, section.length);
  if (hashOf(bytes) !== section.hash) {
    refine?.(bytes);
    throw new Misfit(section.bytesAt, notice('file-section-differs', { section: section.name }));
  }
  return bytes;
}

const PIECE = 1 << 20;

/** Reads a section of any length and holds it against its hash; memory stays flat. */
export async function checkSection(
  source: ByteSource,
  section: ReadSection,
  take: (bytes: Uint8Array) => unknown = () => {},
): Promise<void> {
  const hash = sha256.create();
  for (let at = 0; at < section.length; at += PIECE) {
    const bytes = await source.read(section.bytesAt + at, Math.min(PIECE, section.length - at));
    hash.update(bytes);
    await take(bytes);
  }
  if (bytesToHex(hash.digest()) !== section.hash)
    throw new Misfit(section.bytesAt, notice('file-section-differs', { section: section.name }));
}
