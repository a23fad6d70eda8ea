/** A name and what belongs to it, as on a data sheet, with the source of the figure where it has one. */
export interface ToldFact {
  readonly name: string;
  readonly text: string;
  readonly source?: string;
  /** the figure a reader looks for first */
  readonly leading?: string;
}

/** Facts that are known; what is not has no line. */
export const known = (facts: readonly (ToldFact | undefined | false)[]): ToldFact[] =>
  facts.filter((one) => one !== undefined && one !== false);
