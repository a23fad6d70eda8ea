import { existsSync, readFileSync } from 'node:fs';
import { type ByteSource, readReport, type Verified, verifyHandover } from '@clampwright/record';
import { fileSource, once } from '@clampwright/store';
import { remedy, says } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { isFile } from './job-folder.ts';
import { textTable } from './text-table.ts';
import { written } from './written.ts';

export interface VerifyOptions {
  readonly seen?: string;
  readonly key?: string;
  /** where to put the report */
  readonly report?: string;
  readonly json?: boolean;
}

/** `clampwright verify FILE`: does a handover file fit in every byte? Needs no server and no network. */
export async function verifyCommand(file: string, { seen, key, report, json }: VerifyOptions): Promise<number> {
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
    if (!result.ok) return EXIT.stops;
    return report === undefined ? EXIT.fine : await putReport(source, report);
  } finally {
    await source.close();
  }
}

/** The report of a file that was verified, byte for byte. */
async function putReport(source: ByteSource, path: string): Promise<number> {
  const bytes = await readReport(source);
  return bytes ? written(path, once(bytes)) : refuse('The file holds no report.');
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
