import { done, notice, type Outcome, refused } from '@clampwright/core';
import { readUtf8 } from '@clampwright/record';

/** Reads a body to its end, or refuses it when it is too large. */
export async function readBody(request: Request, most: number): Promise<Outcome<Uint8Array>> {
  const parts: Uint8Array[] = [];
  try {
    for await (const part of bodyUpTo(request, most)) parts.push(part);
  } catch (error) {
    return refused(error instanceof BodyTooLarge ? notice('body-too-large', { limit: most }) : notice('body-cut-short', {}));
  }
  return done(new Uint8Array(Buffer.concat(parts)));
}

export class BodyTooLarge extends Error {}

/** A body as it comes; ends with `BodyTooLarge` when it is more than was agreed. */
export async function* bodyUpTo(request: Request, most: number): AsyncGenerator<Uint8Array> {
  if (!request.body) return;
  const reader = request.body.getReader();
  let size = 0;
  const tooLarge = Number(request.headers.get('content-length') ?? 0) > most;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.length;
    if (tooLarge || size > most) {
      await letPass(reader);
      throw new BodyTooLarge();
    }
    yield part.value;
  }
}

const LET_PASS_BYTES = 256 * 1024 * 1024;
const LET_PASS_MS = 5000;

/** Lets the rest of a body go by, for a while: who is still sending would not hear the answer. */
async function letPass(reader: ReadableStreamDefaultReader<Uint8Array>): Promise<void> {
  const over = new Promise<'over'>((resolve) => setTimeout(resolve, LET_PASS_MS, 'over').unref());
  let size = 0;
  try {
    while (size < LET_PASS_BYTES) {
      const part = await Promise.race([reader.read(), over]);
      if (part === 'over' || part.done) return;
      size += part.value.length;
    }
  } catch {
    // it broke off by itself
  }
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
