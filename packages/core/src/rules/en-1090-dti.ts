import { done } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import { EN_1090, en1090Preconditions, en1090Source } from './en-1090.ts';
import type { RuleSet } from './rule-set.ts';
import { assemblyCeiling, snug } from './shared.ts';

const CLAUSE = '8.5.6 and annex J';

/**
 * Thickness of the feeler gauge for a direct tension indicator, by where it lies and which part turns.
 *
 * - indicator under the part that is held: 0.40 mm; under the part that turns: 0.25 mm
 *
 * Source: EN 1090-2:2018 annex J, Table J.1; EN 14399-9 (from memory).
 *
 * @example
 * expect(feelerThickness('head', 'nut')).toBe(0.4);
 * expect(feelerThickness('head', 'head')).toBe(0.25);
 */
export const feelerThickness = (indicatorUnder: 'head' | 'nut', turned: 'head' | 'nut'): Millimetre =>
  mm(indicatorUnder === turned ? 0.25 : 0.4);

/** EN 1090-2 direct-tension-indicator method: turn until the indicator's protrusions are flat to the feeler gauge. No setting. */
export const en1090Dti: RuleSet = {
  title: 'EN 1090-2, direct tension indicators',
  editions: ['2018', '2008'],
  stepWord: 'step',
  sources: [{ ...EN_1090, clause: CLAUSE }],
  assemblies: 'EN 14399',
  reach: 'nut and pitch',
  tighten(bolt) {
    const clause = en1090Source(bolt, CLAUSE);
    const ready = en1090Preconditions(bolt, 'DTI');
    if (!ready.ok) return ready;
    const { target } = ready.value;
    return done({
      target,
      formula: 'F_p,C = 0.7 · f_ub · A_s',
      meaning: 'at least',
      steps: [
        snug(en1090Source(bolt, '8.3')),
        { name: 'first step', end: { kind: 'indicator starts to flatten' }, order: 'sequence', source: clause },
        {
          name: 'second step',
          end: { kind: 'feeler refused', thickness: feelerThickness('head', 'nut') },
          order: 'sequence',
          aim: target.value,
          source: clause,
        },
      ],
      ceiling: assemblyCeiling(bolt),
      aboveTarget: { allowed: false, source: clause },
      cautions: ['first-step-before-second', 'as-delivered-lubricant', 'discard-slackened'],
      notices: [],
    });
  },
};
