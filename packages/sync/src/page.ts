import { type Kept, type Receipt, readEntry, readReceipt, readUtf8, receiptBytes, utf8 } from '@clampwright/record';
import { linesOf, readLines } from './lines.ts';

/** A stretch of the log on its way to a device: the checkpoint, then receipt and entry by turns. */
export interface Page {
  /** signed note of the whole log as it stood */
  readonly checkpoint: string;
  readonly rows: readonly Row[];
}
export interface Row {
  readonly receipt: Receipt;
  readonly bytes: Uint8Array;
}

export const writePage = ({ checkpoint, rows }: Page): Uint8Array =>
  linesOf([utf8(JSON.stringify(checkpoint)), ...rows.flatMap(({ receipt, bytes }) => [receiptBytes(receipt), bytes])]);

/** Undefined where the page is not whole. */
export function readPage(
  bytes: Uint8Array,
): { readonly checkpoint: string; readonly rows: readonly (Row & { readonly kept: Kept })[] } | undefined {
  const lines = readLines(bytes);
  if (!lines || lines.length % 2 !== 1) return undefined;
  const checkpoint = readNote(lines[0]!);
  if (checkpoint === undefined) return undefined;
  const rows: (Row & { readonly kept: Kept })[] = [];
  for (let at = 1; at < lines.length; at += 2) {
    const [receipt, kept] = [readReceipt(lines[at]!), readEntry(lines[at + 1]!)];
    if (!receipt.ok || !kept.ok || receipt.value.entry !== kept.value.hash) return undefined;
    rows.push({ receipt: receipt.value, bytes: lines[at + 1]!, kept: kept.value });
  }
  return { checkpoint, rows };
}

function readNote(line: Uint8Array): string | undefined {
  try {
    const note: unknown = JSON.parse(readUtf8(line) ?? '');
    return typeof note === 'string' ? note : undefined;
  } catch {
    return undefined;
  }
}
