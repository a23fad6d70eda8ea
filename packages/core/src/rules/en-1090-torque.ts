import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import { type NewtonMillimetre, Nmm } from '../quantity.ts';
import { torqueForPreload } from '../torque/tightening-torque.ts';
import { EN_1090, en1090Preconditions, en1090Source } from './en-1090.ts';
import type { RuleSet } from './rule-set.ts';
import { assemblyCeiling, snug, window } from './shared.ts';

const CLAUSE = '8.5.3';

/** Share of the reference torque of the first and the second step. The second is about 1/(1 − 1.65·V_k) with V_k = 0.06. */
export const FIRST_STEP = 0.75;
export const SECOND_STEP = 1.1;
/** Share of the reference torque at which the inspector's wrench must not move the nut. EN 1090-2:2018 12.5.2.4. */
export const CONTROL_SHARE = 1.05;
/** Accuracy of the wrench, and our window about the torque the step names. EN 1090-2:2018 8.5.1; EN ISO 6789. */
const WRENCH_ACCURACY = 0.04;
/** "About 0.75": our window about the first step; the second overtakes it. Own choice. */
const ABOUT = 0.05;

/**
 * Margin of the torque method over the reference torque: 1/(1 − 1.65·V_k), 1.11 at the limit V_k = 0.06 of class K2.
 * Source: EN 1090-2:2018 8.5.3, note (from memory).
 *
 * @example
 * expect(torqueMargin(0.06)).toBeCloseTo(1.11, 2);
 */
export const torqueMargin = (variation: number): number => 1 / (1 - 1.65 * variation);

/**
 * EN 1090-2 torque method: the whole group to about 0.75·M_r,2, then all of it to 1.10·M_r,2, M_r,2 = k_m·d·F_p,C.
 * Needs k-class K2: k_m measured on the lot. Control torque 1.05·M_r,2.
 */
export const en1090Torque: RuleSet = {
  title: 'EN 1090-2, torque method',
  editions: ['2018', '2008'],
  stepWord: 'step',
  sources: [{ ...EN_1090, clause: CLAUSE }],
  assemblies: 'EN 14399',
  reach: 'nut and pitch',
  tighten(bolt) {
    const clause = en1090Source(bolt, CLAUSE);
    const ready = en1090Preconditions(bolt, 'torque');
    if (!ready.ok) return ready;
    const { target, friction } = ready.value;
    if (friction === undefined) return refused(notice('k-class-needed', { method: 'torque method', needed: 'K2' }));
    const reference = torqueForPreload(friction, bolt.thread, target.value);
    const at = (share: number): NewtonMillimetre => Nmm(share * reference);
    return done({
      target,
      formula: 'F_p,C = 0.7 · f_ub · A_s;  M_r,2 = k_m · d · F_p,C',
      meaning: 'at least',
      steps: [
        snug(en1090Source(bolt, '8.3')),
        { name: 'first step', end: { kind: 'stall' }, order: 'sequence', torque: window(at(FIRST_STEP), ABOUT), source: clause },
        {
          name: 'second step',
          end: { kind: 'stall' },
          order: 'sequence',
          torque: window(at(SECOND_STEP), WRENCH_ACCURACY),
          aim: target.value,
          source: clause,
        },
      ],
      ceiling: assemblyCeiling(bolt),
      aboveTarget: { allowed: false, source: clause },
      controlTorque: { value: at(CONTROL_SHARE), source: en1090Source(bolt, '12.5.2.4') },
      friction,
      cautions: ['first-step-before-second', 'as-delivered-lubricant', 'never-above-method', 'discard-slackened'],
      notices: [],
    });
  },
};
