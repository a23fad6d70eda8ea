import type { Outcome } from '@clampwright/core';
import type { Answered, Asked, EndpointName } from '@clampwright/sync';
import type { Context } from '../context.ts';
import type { Principal } from '../principal.ts';

/** What a handler is called with; `request` for those that stream. */
export interface Call {
  readonly context: Context;
  readonly who: Principal;
  readonly request: Request;
  /** address of the asker, for limits */
  readonly from: string;
  /** adds a header to the answer */
  readonly header: (name: string, value: string) => void;
}

type Streamed<E extends EndpointName> = Answered<E> extends Uint8Array ? Uint8Array | AsyncIterable<Uint8Array> | string : Answered<E>;

export type Handler<E extends EndpointName> = (asked: Asked<E>, call: Call) => Promise<Outcome<Streamed<E>>>;
export type Handlers = { readonly [E in EndpointName]: Handler<E> };
