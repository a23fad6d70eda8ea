import { Inflate } from 'fflate';
import { broken, tooLarge, unsafe } from './misfit.ts';

/** A part of a ZIP file, still packed. Format: PKWARE APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12 and 4.3.16. */
export interface ZipPart {
  readonly name: string;
  readonly method: number;
  readonly packed: Uint8Array;
  /** bytes after unpacking, as the directory states them */
  readonly size: number;
}

/** One part unpacked; the sheet of 250 000 rows of a joint list takes 120 MB. */
const LARGEST_PART = 256 * 1024 * 1024;
const LARGEST_PART_TEXT = '256 MiB unpacked';
/** Deflate cannot shrink more than 1032 to 1; sheets of real rows stay under 60 to 1. */
const LARGEST_RATIO = 300;
/** Small parts of nothing but blanks may shrink as they like. */
const SMALL_PART = 4 * 1024 * 1024;
const MOST_PARTS = 4096;

const DIRECTORY_END = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_ENTRY = 0x04034b50;

/** The parts of a ZIP file by its directory; nothing is unpacked. */
export function zipParts(bytes: Uint8Array): ReadonlyMap<string, ZipPart> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = directoryEnd(view);
  const count = view.getUint16(end + 10, true);
  if (count > MOST_PARTS) throw tooLarge(`${MOST_PARTS} parts`);
  const parts = new Map<string, ZipPart>();
  const names = new TextDecoder();
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== DIRECTORY_ENTRY) throw broken('its directory is damaged');
    const [flags, method] = [view.getUint16(at + 8, true), view.getUint16(at + 10, true)];
    const [packedSize, size] = [view.getUint32(at + 20, true), view.getUint32(at + 24, true)];
    const nameLength = view.getUint16(at + 28, true);
    const local = view.getUint32(at + 42, true);
    const name = names.decode(bytes.subarray(at + 46, at + 46 + nameLength));
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if ((flags & 1) !== 0) throw unsafe('it is locked with a password');
    if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL_ENTRY) throw broken('a part is not where its directory says');
    const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    if (from + packedSize > bytes.length) throw broken('it is cut short');
    parts.set(name, { name, method, size, packed: bytes.subarray(from, from + packedSize) });
  }
  return parts;
}

function directoryEnd(view: DataView): number {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 65_535); at -= 1)
    if (view.getUint32(at, true) === DIRECTORY_END) return at;
  throw broken('it is cut short');
}

const PUSH_BYTES = 16 * 1024;

/** Unpacks a part piece by piece. What it claims is checked before, what it gives while it flows: no more memory is taken than was said. */
export function unpack({ name, method, packed, size }: ZipPart, take: (piece: Uint8Array, last: boolean) => void): void {
  if (size > LARGEST_PART) throw tooLarge(LARGEST_PART_TEXT);
  if (size > SMALL_PART && size > packed.length * LARGEST_RATIO)
    throw unsafe(`its part ${name} would grow ${Math.round(size / packed.length)} times when unpacked`);
  if (method !== 0 && method !== 8) throw broken(`its part ${name} is packed in a way that workbooks are not`);
  let given = 0;
  const checked = (piece: Uint8Array, last: boolean) => {
    given += piece.length;
    if (given > size) throw unsafe(`its part ${name} is larger than it says`);
    if (last && given < size) throw broken(`its part ${name} is cut short`);
    take(piece, last);
  };
  if (method === 0) {
    checked(packed, true);
    return;
  }
  const inflate = new Inflate(checked);
  for (let at = 0; at === 0 || at < packed.length; at += PUSH_BYTES) {
    try {
      inflate.push(packed.subarray(at, at + PUSH_BYTES), at + PUSH_BYTES >= packed.length);
    } catch (error) {
      // fflate names its own faults by a number
      if (error instanceof Error && 'code' in error && typeof error.code === 'number') throw broken(`its part ${name} cannot be unpacked`);
      throw error;
    }
  }
}
