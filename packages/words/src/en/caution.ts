import type { CautionCode } from '@clampwright/core';

/** The usual cautions, one sentence each, as they stand on plan and card. */
export const CAUTION_TEXTS: Readonly<Record<CautionCode, string>> = {
  'hands-off-arm': 'Hands off arm and socket while the tool turns. One person holds and triggers.',
  'arm-against-point': 'Arm against its reaction point before the trigger, square and in the plane of the nut.',
  'never-lengthen-arm': 'Never lengthen, weld or pack out an arm.',
  'one-pull-per-bolt': 'The tool has stalled: this bolt is done in this round. No second pull that is not planned.',
  'arm-comes-free': 'The arm must come free after the stall. After a reverse pull to free it, look at the match-mark.',
  'direction-locked': 'Lock the direction while carrying the tool.',
  'cut-out-is-not-a-stall': 'Tool empty, hot or faulty is a cut-out, not a stall: the bolt is not done.',
  'tether-at-height': 'Tether tool, socket and arm; nobody below.',
  'as-delivered-lubricant': 'Use the lubricant as delivered. Do not clean or grease; keep lots apart.',
  'wet-means-retest': 'Wet, rusted or dropped in sand: put the lot aside until it is tested again.',
  'first-step-before-second': 'The whole group gets the first step before any bolt gets the second.',
  'mark-before-turning': 'Match-mark nut, bolt end and plate before turning.',
  'never-above-method': 'Never above what the method says. Uneven: repeat snug or first step, or ask.',
  'spline-only-after-snug': 'A severed spline counts only where snug was shown before.',
  'pressure-isolated': 'Pressure isolated, drained, vented; permit in hand before the first nut moves.',
  'gap-after-each-pass': 'Read the gap at eight points after each pass.',
  'recheck-after-four-hours': 'Repeat the last circular pass after four hours or more, before pressure.',
  'no-value-without-engineer': 'No figure of ours replaces the engineer’s.',
  'hazardous-area': 'A battery or electric tool is an ignition source: hot-work permit and gas test first.',
  'discard-slackened': 'Tightened once and slackened again: discard bolt, nut and washers.',
  'hold-the-other-part': 'Hold the part that must not turn; if bolt and nut turn together, stop and tell.',
};
