/** The usual cautions, by code; the texts live in `words`. Each is shown with the step it fits. */
export const CAUTIONS = [
  'hands-off-arm',
  'arm-against-point',
  'never-lengthen-arm',
  'one-pull-per-bolt',
  'cut-out-is-not-a-stall',
  'tether-at-height',
  'as-delivered-lubricant',
  'wet-means-retest',
  'first-step-before-second',
  'mark-before-turning',
  'never-above-method',
  'spline-only-after-snug',
  'pressure-isolated',
  'gap-after-each-pass',
  'recheck-after-four-hours',
  'no-value-without-engineer',
  'hazardous-area',
  'discard-slackened',
  'hold-the-other-part',
  'arm-comes-free',
  'direction-locked',
] as const;

export type CautionCode = (typeof CAUTIONS)[number];
