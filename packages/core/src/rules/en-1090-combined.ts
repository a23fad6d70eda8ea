import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import { degrees, Nmm } from '../quantity.ts';
import { torqueForPreload } from '../torque/tightening-torque.ts';
import { combinedRotation, EN_1090, en1090Preconditions, en1090Source, rotationFor } from './en-1090.ts';
import { FIRST_STEP } from './en-1090-torque.ts';
import type { RuleSet } from './rule-set.ts';
import { assemblyCeiling, snug, window } from './shared.ts';

const CLAUSE = '8.5.4';
/** The first step's wrench: ±10 % (EN 1090-2:2018 8.5.1, from memory). */
const FIRST_STEP_ACCURACY = 0.1;
/** After the second step: up to 15° short is turned further, more than 30° over is replaced. EN 1090-2:2018 12.5.2.5 (from memory). */
const SHORT = degrees(15);
const OVER = degrees(30);

/**
 * EN 1090-2 combined method: the whole group to 0.75·M_r (M_r,2 of a K2 lot, else M_r,1 = 0.13·d·F_p,C), match-marks, then every
 * bolt turned by an angle that depends on Σt. The second step has no setting: it ends at the mark, and takes the bolt near yield.
 */
export const en1090Combined: RuleSet = {
  title: 'EN 1090-2, combined method',
  editions: ['2018', '2008'],
  stepWord: 'step',
  sources: [{ ...EN_1090, clause: CLAUSE }],
  assemblies: 'EN 14399',
  reach: 'nut and pitch',
  tighten(bolt) {
    const clause = en1090Source(bolt, CLAUSE);
    const ready = en1090Preconditions(bolt, 'combined');
    const angle = rotationFor(bolt, combinedRotation);
    if (!ready.ok || !angle.ok) return refused(...(ready.ok ? [] : ready.notices), ...(angle.ok ? [] : angle.notices));
    const { target, friction } = ready.value;
    if (friction === undefined) return refused(notice('k-class-needed', { method: 'combined method', needed: 'K1 / K2' }));
    const first = Nmm(FIRST_STEP * torqueForPreload(friction, bolt.thread, target.value));
    return done({
      target,
      formula:
        bolt.kClass === 'K2' ? 'F_p,C = 0.7 · f_ub · A_s;  M_r,2 = k_m · d · F_p,C' : 'F_p,C = 0.7 · f_ub · A_s;  M_r,1 = 0.13 · d · F_p,C',
      meaning: 'at least',
      steps: [
        snug(en1090Source(bolt, '8.3')),
        { name: 'first step', end: { kind: 'stall' }, order: 'sequence', torque: window(first, FIRST_STEP_ACCURACY), source: clause },
        {
          name: 'second step',
          end: { kind: 'mark at angle', angle: angle.value, minus: SHORT, plus: OVER },
          order: 'sequence',
          aim: target.value,
          source: en1090Source(bolt, 'Table 21'),
        },
      ],
      ceiling: assemblyCeiling(bolt),
      aboveTarget: { allowed: false, source: clause },
      friction,
      cautions: ['first-step-before-second', 'mark-before-turning', 'as-delivered-lubricant', 'never-above-method', 'discard-slackened'],
      notices: [],
    });
  },
};
