import { createHash } from 'node:crypto';
import { existsSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Everything of the product that can carries this word near its beginning, so that it knows its own files again. */
const OWN_MARK = 'clampwright-';
/** Beside files that cannot carry it (spreadsheets, PDF): what was written, by hash. One that somebody changed since is no longer ours. */
const LEDGER = '.clampwright-files.json';

const hashOf = (bytes: string | Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const carriesMark = (bytes: string | Uint8Array) =>
  (typeof bytes === 'string' ? bytes.slice(0, 400) : Buffer.from(bytes.subarray(0, 400)).toString('latin1')).includes(OWN_MARK);

function ledgerOf(folder: string): Record<string, string[]> {
  try {
    return JSON.parse(readFileSync(join(folder, LEDGER), 'utf8')) as Record<string, string[]>;
  } catch {
    return {};
  }
}

/** Was this file written by us, and is it still as we wrote it or marked as ours? */
export function isOurs(folder: string, name: string): boolean {
  const path = join(folder, name);
  if (!statSync(path).isFile()) return false;
  const bytes = readFileSync(path);
  return carriesMark(bytes) || (ledgerOf(folder)[name] ?? []).includes(hashOf(bytes));
}

/** Writes a file whole, by way of a temporary name, and remembers it where it cannot say itself whose it is. */
export function writeOwn(folder: string, name: string, bytes: string | Uint8Array): void {
  const whole = (file: string, content: string | Uint8Array) => {
    const part = join(folder, `${file}.${process.pid}.part`);
    writeFileSync(part, content, { flag: 'wx' });
    renameSync(part, join(folder, file));
  };
  if (!carriesMark(bytes)) {
    const ledger = ledgerOf(folder);
    // with the one before: a stop between the two files leaves either of them known
    ledger[name] = [...(ledger[name] ?? []).slice(-1), hashOf(bytes)];
    whole(LEDGER, `${JSON.stringify(ledger, null, 1)}\n`);
  }
  whole(name, bytes);
}

export const isThere = (folder: string, name: string): boolean => existsSync(join(folder, name));
