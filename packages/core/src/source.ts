/** Where a number comes from. Every table and every figure of a plan carries one. */
export type Provenance =
  /** the standard or a public text of it was read */
  | 'published'
  /** follows from the named formula */
  | 'computed'
  /** recalled, not seen while entering it: confirm in the standard before a release relies on it */
  | 'memory'
  /** done in the trade, without a source that could be named */
  | 'common-practice'
  /** from a certificate or a test of the user's own */
  | 'certificate'
  /** given by the engineer for this joint */
  | 'engineer';

export interface Source {
  readonly standard: string;
  readonly edition?: string;
  readonly clause?: string;
  readonly provenance: Provenance;
}

/** A value together with where it was taken from. */
export interface Cited<T> {
  readonly value: T;
  readonly source: Source;
}
