import { done, notice, type Outcome, refused } from '@clampwright/core';
import { readUtf8 } from '@clampwright/record';

/** Reads a body to its end, or refuses it as soon as it is known to be too large. */
export async function readBody(request: Request, most: number): Promise<Outcome<Uint8Array>> {
  const tooLarge = refused(notice('body-too-large', { limit: most }));
  if (Number(request.headers.get('content-length') ?? 0) > most) return tooLarge;
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const part of streamOf(request)) {
      size += part.length;
      if (size > most) return tooLarge;
      parts.push(part);
    }
  } catch {
    return refused(notice('body-cut-short', {}));
  }
  return done(new Uint8Array(Buffer.concat(parts)));
}

export async function* streamOf(request: Request): AsyncGenerator<Uint8Array> {
  if (request.body) yield* request.body as unknown as AsyncIterable<Uint8Array>;
}

/** JSON in UTF-8, strictly: bytes that are not UTF-8 are refused and not mended. */
export function readJson(bytes: Uint8Array): Outcome<unknown> {
  const text = readUtf8(bytes);
  try {
    if (text !== undefined) return done(JSON.parse(text));
  } catch {
    // said below
  }
  return refused(notice('body-not-json', {}));
}
