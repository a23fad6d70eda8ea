import { existsSync, readFileSync } from 'node:fs';
import { type Verified, verifyHandover } from '@clampwright/record';
import { fileSource } from '@clampwright/store';
import { remedy, says } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { isFile } from './job-folder.ts';
import { textTable } from './text-table.ts';

export interface VerifyOptions {
  readonly seen?: string;
  readonly key?: string;
  readonly json?: boolean;
}

/** `clampwright verify FILE`: does a handover file fit in every byte? Needs no server and no network. */
export async function verifyCommand(file: string, { seen, key, json }: VerifyOptions): Promise<number> {
  const missing = [file, seen].filter((path) => path !== undefined && !isFile(path));
  if (missing.length > 0) return refuse(missing.map((path) => `There is no file ${path}.`).join('\n'));
  const source = await fileSource(file);
  try {
    const result = await verifyHandover(source, {
      ...(seen === undefined ? {} : { seen: readFileSync(seen, 'utf8') }),
      ...(key === undefined ? {} : { key: existsSync(key) ? readFileSync(key, 'utf8') : key }),
    });
    if (json) process.stdout.write(`${JSON.stringify(result, null, 2)}\n`);
    else if (result.ok) process.stdout.write(`${verifiedText(result.value, { seen, key })}\n`);
    else {
      const { byte, reason } = result.fault;
      process.stdout.write(`NOT VERIFIED. The first byte that does not fit is byte ${byte}.\n${says(reason)}\n→ ${remedy(reason)}\n`);
    }
    return result.ok ? EXIT.fine : EXIT.stops;
  } finally {
    await source.close();
  }
}

function verifiedText(file: Verified, { seen, key }: { readonly seen: string | undefined; readonly key: string | undefined }): string {
  const rows = file.devices.map(({ device, entries, unsigned, forked }) => [
    device,
    String(entries),
    String(unsigned),
    forked ? 'copied or set back' : '',
  ]);
  return [
    `VERIFIED. ${file.title} · ${file.site}`,
    `${file.size} entries, ${file.attachments} attachments, ${file.missing.length} named and not in the file${file.report ? ', report' : ''}; made ${file.made}`,
    textTable(['device', 'entries', 'not signed', ''], rows),
    `Log key ${file.logKey}\n${key === undefined ? 'Taken from the file itself. Compare it with the key you were told, or give it with --key.' : 'It is the key you gave.'}`,
    file.seen === undefined
      ? `${seen === undefined ? 'No earlier checkpoint was given: a file cut back to an older state would not show. Give one with --seen.' : ''}`
      : `Continues the checkpoint of ${file.seen} entries that was seen.`,
    `Keep this checkpoint; a later file must continue it:\n${file.checkpoint}`,
  ].join('\n\n');
}
