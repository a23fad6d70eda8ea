import type { Judged, Judgement } from './judge.ts';

export type Count = Record<Judgement, number>;

const none = (): Count => ({ agreed: 0, disagreed: 0, disputed: 0, 'not evaluated': 0, "not the product's": 0 });

/** Counts by topic, in the order the topics first appear, and in all. */
export function tally(results: Iterable<Judged>): { readonly topics: ReadonlyMap<string, Count>; readonly all: Count } {
  const topics = new Map<string, Count>();
  const all = none();
  for (const { row, judgement } of results) {
    const count = topics.get(row.topic) ?? none();
    topics.set(row.topic, count);
    count[judgement] += 1;
    all[judgement] += 1;
  }
  return { topics, all };
}
