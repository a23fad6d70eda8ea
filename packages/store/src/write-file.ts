import { open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Writes a file whole or not at all: to a name beside it, synced, then renamed. An existing file is left as it is. */
export async function writeFileWhole(path: string, bytes: AsyncIterable<Uint8Array>): Promise<number> {
  const part = `${path}.${process.pid}.part`;
  const taken = await open(path, 'wx');
  await taken.close();
  try {
    const file = await open(part, 'w', 0o600);
    let size = 0;
    try {
      for await (const piece of bytes) {
        await file.writeFile(piece);
        size += piece.length;
      }
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(part, path);
    const folder = await open(dirname(path), 'r');
    await folder.sync().finally(() => folder.close());
    return size;
  } catch (error) {
    await rm(part, { force: true });
    await rm(path, { force: true });
    throw error;
  }
}
