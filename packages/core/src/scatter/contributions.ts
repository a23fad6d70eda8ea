/** Where the scatter of a preload comes from. */
export type ScatterSource = 'certificate' | 'repeatability' | 'lot mean' | 'bolt to bolt';

/** One contribution: its coefficient of variation, and whether all bolts of a joint have the same draw of it. */
export interface Contribution {
  readonly source: ScatterSource;
  readonly variation: number;
  readonly shared: boolean;
}

export interface ScatterSplit {
  readonly shared: number;
  readonly individual: number;
  /** share of the variance of each, largest first: what the crew can act on */
  readonly shares: readonly { readonly source: ScatterSource; readonly share: number }[];
}

/**
 * Contributions kept apart as shared and individual: V_s² = Σ shared V², V_i² = Σ individual V²; shares of V² add up to one.
 *
 * @example
 * const split = splitScatter([{ source: 'certificate', variation: 0.01, shared: true }, { source: 'bolt to bolt', variation: 0.06, shared: false }]);
 * expect(split.shares[0].source).toBe('bolt to bolt');
 * expect(split.shares[0].share).toBeCloseTo(36 / 37, 12);
 */
export function splitScatter(contributions: readonly Contribution[]): ScatterSplit {
  const square = (of: readonly Contribution[]) => of.reduce((sum, { variation }) => sum + variation ** 2, 0);
  const all = square(contributions);
  return {
    shared: Math.sqrt(square(contributions.filter(({ shared }) => shared))),
    individual: Math.sqrt(square(contributions.filter(({ shared }) => !shared))),
    shares: contributions
      .map(({ source, variation }) => ({ source, share: all > 0 ? variation ** 2 / all : 0 }))
      .sort((a, b) => b.share - a.share),
  };
}
