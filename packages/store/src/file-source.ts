import { open } from 'node:fs/promises';
import type { ByteSource } from '@clampwright/record';

/** A file that is read in pieces. */
export async function fileSource(path: string): Promise<ByteSource & { readonly close: () => Promise<void> }> {
  const file = await open(path, 'r');
  const { size } = await file.stat();
  return {
    size,
    read: async (offset, length) => {
      const bytes = new Uint8Array(Math.max(0, Math.min(length, size - offset)));
      let got = 0;
      while (got < bytes.length) {
        const { bytesRead } = await file.read(bytes, got, bytes.length - got, offset + got);
        if (bytesRead === 0) break;
        got += bytesRead;
      }
      return got === bytes.length ? bytes : bytes.subarray(0, got);
    },
    close: () => file.close(),
  };
}
