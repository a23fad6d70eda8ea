import { type Notice, notice, type Outcome, refused } from '@clampwright/core';

/** Larger input is refused before it is taken apart. */
export const LARGEST_FILE = 64 * 1024 * 1024;
export const LARGEST_FILE_TEXT = '64 MiB';

export interface Text {
  readonly text: string;
  readonly notices: readonly Notice[];
}

/**
 * Bytes as text: UTF-8 with or without BOM, UTF-16 with BOM or by its zero bytes, else Windows-1252, which is said.
 * Anything with zero bytes beyond that is not text.
 */
export function decode(bytes: Uint8Array, file: string): Outcome<Text> {
  const place = { file };
  if (bytes.length === 0) return refused(notice('file-empty', { file }, place));
  if (bytes.length > LARGEST_FILE) return refused(notice('file-too-large', { file, limit: LARGEST_FILE_TEXT }, place));
  const wide = utf16(bytes);
  if (wide) return found(new TextDecoder(wide).decode(bytes));
  if (bytes.subarray(0, 65536).includes(0)) return refused(notice('file-not-text', { file }, place));
  try {
    return found(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return found(new TextDecoder('windows-1252').decode(bytes), [
      notice('encoding-assumed', { file, encoding: 'Windows-1252 (Latin-1)' }, place),
    ]);
  }
}

const found = (text: string, notices: readonly Notice[] = []): Outcome<Text> => ({ ok: true, value: { text, notices } });

/** UTF-16 by its BOM, or because every other byte of the beginning is zero. */
function utf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const head = bytes.subarray(0, 64);
  if (head.length < 4) return undefined;
  const zeros = (parity: number) => head.filter((byte, i) => i % 2 === parity && byte === 0).length / (head.length / 2);
  if (zeros(1) > 0.8 && zeros(0) < 0.1) return 'utf-16le';
  if (zeros(0) > 0.8 && zeros(1) < 0.1) return 'utf-16be';
  return undefined;
}
