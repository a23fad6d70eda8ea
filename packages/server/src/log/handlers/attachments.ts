import { done, notice, refused } from '@clampwright/core';
import { CONTRACT } from '@clampwright/sync';
import { notFound } from '../reply.ts';
import { BodyTooLarge, bodyUpTo } from '../request-body.ts';
import type { Handlers } from './handler.ts';

const LIMIT = CONTRACT.putAttachment.body.most;

export const attachmentHandlers = {
  putAttachment: async ({ params: { job, hash } }, { context: { store }, request }) => {
    try {
      const kept = await store.attachments.put(job, hash, bodyUpTo(request, LIMIT));
      return kept ? done(undefined) : refused(notice('hash-of-other-bytes', { hash }));
    } catch (error) {
      if (error instanceof BodyTooLarge) return refused(notice('body-too-large', { limit: LIMIT }));
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
