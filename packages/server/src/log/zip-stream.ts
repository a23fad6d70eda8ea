import { Zip, ZipDeflate } from 'fflate';
import type { OpenFile } from './open-export.ts';

/** Dates in a zip archive begin here; the same files give the same bytes. */
const EPOCH = new Date(1980, 0, 1);

/** Files into one archive, as they come: no more than one of them is held at a time. */
export async function* zipped(files: AsyncIterable<OpenFile>): AsyncGenerator<Uint8Array> {
  const ready: Uint8Array[] = [];
  const archive = new Zip((fault, bytes) => {
    if (fault) throw fault;
    if (bytes.length > 0) ready.push(bytes);
  });
  for await (const { path, bytes } of files) {
    const file = new ZipDeflate(path, { level: 6 });
    file.mtime = EPOCH;
    archive.add(file);
    file.push(bytes, true);
    yield* ready.splice(0);
  }
  archive.end();
  yield* ready.splice(0);
}
