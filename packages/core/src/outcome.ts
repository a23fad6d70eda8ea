import type { Notice } from './notice/index.ts';

/** A result, or all the reasons why there is none. A refusal is a value; only a defect throws. */
export type Outcome<T> = Done<T> | Refused;
export interface Done<T> {
  readonly ok: true;
  readonly value: T;
}
export interface Refused {
  readonly ok: false;
  readonly notices: readonly Notice[];
}

export const done = <T>(value: T): Done<T> => ({ ok: true, value });
export const refused = (...notices: readonly Notice[]): Refused => ({ ok: false, notices });
