import type { Notice } from '@clampwright/core';
import type { Hash } from '../bytes/hash.ts';
import type { NonconformanceDraft } from './draft.ts';
import type { Found } from './found.ts';

/** Found by a person, or a contradiction found in what was told; open until a named person settles it. */
export interface Nonconformance extends Readonly<NonconformanceDraft> {
  /** what contradicts what, where nobody had to raise it */
  readonly notice?: Notice;
  readonly entry?: Hash;
  readonly state: 'open' | 'disputed' | 'to be inspected again' | 'settled';
}

function stateOf({ settlements, reinspections }: NonconformanceDraft): Nonconformance['state'] {
  const named = settlements.filter(({ mention }) => mention.by !== undefined);
  const dispositions = new Set(named.map(({ disposition }) => disposition));
  if (dispositions.size === 0) return 'open';
  if (dispositions.size > 1) return 'disputed';
  if (dispositions.has('use as is')) return 'settled';
  return reinspections.at(-1)?.passed === true ? 'settled' : 'to be inspected again';
}

export function nonconformanceOf(draft: NonconformanceDraft, found?: Found & { readonly joint?: string }): Nonconformance {
  const state = stateOf(draft);
  if (!found) return { ...draft, state };
  return {
    ...draft,
    state,
    notice: found.notice,
    entry: found.entry,
    ...(found.joint === undefined ? {} : { joint: found.joint }),
  };
}
