import { sha256 } from '@noble/hashes/sha2.js';
import { base64 } from '@scure/base';
import { type Hash, hashOf } from '../bytes/hash.ts';
import { utf8 } from '../bytes/text.ts';

/** A part of a file: its name, how long it is and its hash stand before its bytes. */
export interface Section {
  readonly name: string;
  readonly length: number;
  readonly hash: Hash;
  readonly bytes: Uint8Array | AsyncIterable<Uint8Array>;
}

export const sectionOf = (name: string, bytes: Uint8Array): Section => ({ name, length: bytes.length, hash: hashOf(bytes), bytes });

/**
 * A file of sections, written as it goes: a first line, then `name length hash` and the bytes of each, and last a seal over all those
 * lines. Described in docs/handover-format.md.
 */
export async function* writeContainer(
  firstLine: string,
  sections: AsyncIterable<Section>,
  seal: (text: string) => string,
): AsyncGenerator<Uint8Array> {
  const lines = sha256.create();
  let count = 0;
  yield utf8(`${firstLine}\n`);
  for await (const section of sections) {
    const line = utf8(`${section.name} ${section.length} ${section.hash}\n`);
    lines.update(line);
    count += 1;
    yield line;
    if (section.bytes instanceof Uint8Array) yield section.bytes;
    else yield* section.bytes;
    yield utf8('\n');
  }
  yield* sealed(sectionOf('seal', utf8(seal(`${firstLine}\n${count}\n${base64.encode(lines.digest())}\n`))));
}

function* sealed({ name, length, hash, bytes }: Section): Generator<Uint8Array> {
  yield utf8(`${name} ${length} ${hash}\n`);
  yield bytes as Uint8Array;
  yield utf8('\n');
}
