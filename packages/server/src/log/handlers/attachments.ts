import { done, notice, refused } from '@clampwright/core';
import { CONTRACT } from '@clampwright/sync';
import { notFound } from '../reply.ts';
import { streamOf } from '../request-body.ts';
import type { Handlers } from './handler.ts';

class TooLarge extends Error {}
const LIMIT = CONTRACT.putAttachment.body.most;

async function* upTo(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let size = 0;
  for await (const part of bytes) {
    size += part.length;
    if (size > LIMIT) throw new TooLarge();
    yield part;
  }
}

export const attachmentHandlers = {
  putAttachment: async ({ params: { job, hash } }, { context: { store }, request }) => {
    const tooLarge = refused(notice('body-too-large', { limit: LIMIT }));
    if (Number(request.headers.get('content-length') ?? 0) > LIMIT) return tooLarge;
    try {
      return (await store.attachments.put(job, hash, upTo(streamOf(request))))
        ? done(undefined)
        : refused(notice('hash-of-other-bytes', { hash }));
    } catch (error) {
      if (error instanceof TooLarge) return tooLarge;
      throw error;
    }
  },
  attachment: async ({ params: { job, hash } }, { context: { store }, header }) => {
    const size = await store.attachments.size(job, hash);
    if (size === undefined) return notFound;
    header('Content-Length', String(size));
    // what devices sent is never shown as a page of ours
    header('Content-Disposition', 'attachment');
    header('Cache-Control', 'private, max-age=31536000, immutable');
    return done(store.attachments.read(job, hash));
  },
  eraseAttachment: async ({ params: { job, hash } }, { context: { store } }) => {
    if ((await store.attachments.size(job, hash)) === undefined) return notFound;
    await store.attachments.erase(job, hash);
    return done(undefined);
  },
} satisfies Partial<Handlers>;
