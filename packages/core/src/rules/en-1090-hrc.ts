import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import { EN_1090, en1090Preconditions, en1090Source } from './en-1090.ts';
import type { RuleSet } from './rule-set.ts';
import { assemblyCeiling, snug } from './shared.ts';

const CLAUSE = '8.5.5';

/** EN 1090-2 tension-controlled-bolt (HRC) method: a shear wrench turns nut against spline until the spline is off. No setting. */
export const en1090Hrc: RuleSet = {
  title: 'EN 1090-2, tension-controlled bolts (HRC)',
  editions: ['2018', '2008'],
  stepWord: 'step',
  sources: [{ ...EN_1090, clause: CLAUSE }],
  assemblies: 'EN 14399',
  reach: 'nut and pitch',
  tighten(bolt) {
    const clause = en1090Source(bolt, CLAUSE);
    const ready = en1090Preconditions(bolt, 'HRC');
    if (bolt.system !== 'HRC') {
      return refused(
        ...(bolt.system === 'plain' ? [] : [notice('system-needed', { method: 'tension-controlled-bolt method', needed: 'HRC' })]),
        ...(ready.ok ? [] : ready.notices),
      );
    }
    if (!ready.ok) return ready;
    const { target } = ready.value;
    return done({
      target,
      formula: 'F_p,C = 0.7 · f_ub · A_s',
      meaning: 'at least',
      steps: [
        snug(en1090Source(bolt, '8.3')),
        { name: 'first step', end: { kind: 'outer socket stops' }, order: 'sequence', source: clause },
        { name: 'second step', end: { kind: 'spline off' }, order: 'sequence', aim: target.value, source: clause },
      ],
      ceiling: assemblyCeiling(bolt),
      aboveTarget: { allowed: false, source: clause },
      cautions: ['first-step-before-second', 'spline-only-after-snug', 'as-delivered-lubricant', 'discard-slackened'],
      notices: [],
    });
  },
};
