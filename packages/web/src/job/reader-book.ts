import { hashOf } from '@clampwright/record';
import { type Client, readPage } from '@clampwright/sync';
import type { BookSource } from './book.ts';

const PAGE = 1000;

/** A book as a signed-in person reads it from the server, in a browser that is no enrolled device: nothing is kept, nothing is written. */
export function readerSource(client: Client): BookSource {
  const sizes = new Map<string, number>();
  return {
    entries: async (job, from = 0) => {
      const found = [];
      for (let at = from; ; ) {
        const answer = await client('entries', { params: { job }, query: { from: at, limit: PAGE } });
        const page = answer.kind === 'answered' ? readPage(answer.value) : undefined;
        if (!page || page.rows.length === 0) break;
        at += page.rows.length;
        sizes.set(job, at);
        found.push(...page.rows.map(({ kept }) => kept));
      }
      return found;
    },
    cursor: async (job) => ({ size: sizes.get(job) ?? 0, roots: [] }),
    attachment: async (job, hash) => {
      const answer = await client('attachment', { params: { job, hash } });
      return answer.kind === 'answered' && hashOf(answer.value) === hash ? answer.value : undefined;
    },
    append: () => Promise.reject(new Error('a reader writes nothing')),
  };
}
