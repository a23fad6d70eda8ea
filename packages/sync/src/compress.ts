import { joinBytes } from '@clampwright/record';

async function through(bytes: Uint8Array, stream: CompressionStream | DecompressionStream, limit: number): Promise<Uint8Array | undefined> {
  const reader = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream().pipeThrough(stream).getReader();
  const parts: Uint8Array[] = [];
  let size = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.length;
    if (size > limit) {
      await reader.cancel();
      return undefined;
    }
    parts.push(part.value);
  }
  return joinBytes(...parts);
}

/** gzip (RFC 1952): what browsers and Node both have. */
export const compress = async (bytes: Uint8Array): Promise<Uint8Array> =>
  (await through(bytes, new CompressionStream('gzip'), Number.POSITIVE_INFINITY))!;

/** Undefined where the bytes are no gzip, are cut short, or would grow beyond `limit`. */
export async function decompress(bytes: Uint8Array, limit: number): Promise<Uint8Array | undefined> {
  try {
    return await through(bytes, new DecompressionStream('gzip'), limit);
  } catch {
    return undefined;
  }
}
