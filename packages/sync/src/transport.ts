import type { Notice } from '@clampwright/core';
import type { Receipt } from '@clampwright/record';

/** The answer of a server, or that there was none: then the device keeps what it has and comes again. */
export type Answer<T> =
  | { readonly kind: 'answered'; readonly value: T }
  | { readonly kind: 'refused'; readonly notices: readonly Notice[] }
  | { readonly kind: 'unreachable'; readonly why: string };

/** The way to a server. What is sent may arrive twice; an answer may be lost. */
export interface Transport {
  readonly push: (job: string, batch: Uint8Array) => Promise<Answer<readonly Receipt[]>>;
  readonly pull: (job: string, from: number, limit: number) => Promise<Answer<Uint8Array>>;
  readonly putAttachment: (job: string, hash: string, bytes: Uint8Array) => Promise<Answer<true>>;
}
