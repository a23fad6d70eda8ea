import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { degrees, type NewtonMillimetre, Nmm } from '../quantity.ts';
import type { Source } from '../source.ts';
import { byNutFactor, type Friction } from '../torque/friction.ts';
import { REDUCED_SOURCE, type ReducedRow, reducedRotation, reducedRow } from './de-reduced-table.ts';
import { rotationFor } from './en-1090.ts';
import { FIRST_STEP } from './en-1090-torque.ts';
import type { BoltUnderRule, RuleSet, Tightening } from './rule-set.ts';
import { assemblyCeiling, snug, window } from './shared.ts';

const clause: Source = REDUCED_SOURCE;
const WRENCH_ACCURACY = 0.04;
const FIRST_STEP_ACCURACY = 0.1;

/** The row of the table, or why it does not apply: HV sets of class 10.9 with k-class K1, as delivered, and no other. */
function rowFor(bolt: BoltUnderRule): Outcome<ReducedRow> {
  const notices: Notice[] = [];
  if (bolt.system === 'plain') notices.push(notice('assembly-needed', { method: 'reduced preload', needed: 'HV' }));
  if (bolt.grade.id !== '10.9' || (bolt.system !== 'HV' && bolt.system !== 'plain'))
    notices.push(notice('system-needed', { method: 'reduced preload', needed: 'HV 10.9' }));
  if (bolt.kClass === undefined || bolt.kClass === 'K0')
    notices.push(notice('k-class-needed', { method: 'reduced preload', needed: 'K1 / K2' }));
  const row = reducedRow(bolt.thread.diameter);
  if (!row) notices.push(notice('size-not-in-table', { size: bolt.thread.designation, table: 'DIN EN 1993-1-8/NA' }));
  return row && notices.length === 0 ? done(row) : refused(...notices);
}

/** The table ties each torque to its preload: k = M_A/(d·F_p,C*). The variation is the limit of the class, 0.06. */
const tableFriction = (row: ReducedRow, torque: NewtonMillimetre): Friction =>
  byNutFactor(torque / (row.diameter * row.preload), clause, 0.06);

const common = (row: ReducedRow): Pick<Tightening, 'target' | 'formula' | 'meaning' | 'aboveTarget' | 'notices'> => ({
  target: { value: row.preload, source: clause },
  formula: 'F_p,C* = 0.7 · f_yb · A_s, rounded as tabulated',
  meaning: 'at least',
  aboveTarget: { allowed: false, source: clause },
  notices: [],
});

/** Reduced preload, modified torque method: M_A of the table, which holds for this delivery condition only. */
export const deReducedTorque: RuleSet = {
  title: 'Reduced preload (German National Annex), torque',
  editions: ['2010'],
  stepWord: 'step',
  sources: [clause],
  assemblies: 'EN 14399',
  reach: 'nut and pitch',
  tighten(bolt) {
    const found = rowFor(bolt);
    if (!found.ok) return found;
    const row = found.value;
    if (row.torque === null) return refused(notice('size-not-in-table', { size: bolt.thread.designation, table: 'DASt-Richtlinie 021' }));
    const friction = tableFriction(row, row.torque);
    return done({
      ...common(row),
      steps: [
        snug(clause),
        {
          name: 'first step',
          end: { kind: 'stall' },
          order: 'sequence',
          torque: window(Nmm(FIRST_STEP * row.torque), FIRST_STEP_ACCURACY),
          source: clause,
        },
        {
          name: 'second step',
          end: { kind: 'stall' },
          order: 'sequence',
          torque: window(row.torque, WRENCH_ACCURACY),
          aim: row.preload,
          source: clause,
        },
      ],
      ceiling: assemblyCeiling(bolt),
      friction,
      cautions: ['first-step-before-second', 'as-delivered-lubricant', 'never-above-method', 'discard-slackened'],
    });
  },
};

/** Reduced preload, combined method: M_pre of the table, then 45°, 60° or 90°. These angles aim at F_p,C*, not at F_p,C. */
export const deReducedCombined: RuleSet = {
  title: 'Reduced preload (German National Annex), combined',
  editions: ['2010'],
  stepWord: 'step',
  sources: [clause],
  assemblies: 'EN 14399',
  reach: 'nut and pitch',
  tighten(bolt) {
    const found = rowFor(bolt);
    const angle = rotationFor(bolt, reducedRotation);
    if (!found.ok || !angle.ok) return refused(...(found.ok ? [] : found.notices), ...(angle.ok ? [] : angle.notices));
    const row = found.value;
    if (row.combined === null) return refused(notice('size-not-in-table', { size: bolt.thread.designation, table: 'DIN 18800-7' }));
    const friction = tableFriction(row, row.torque ?? row.combined);
    return done({
      ...common(row),
      steps: [
        snug(clause),
        {
          name: 'first step',
          end: { kind: 'stall' },
          order: 'sequence',
          torque: window(row.combined, FIRST_STEP_ACCURACY),
          source: clause,
        },
        {
          name: 'second step',
          end: { kind: 'mark at angle', angle: angle.value, minus: degrees(15), plus: degrees(30) },
          order: 'sequence',
          aim: row.preload,
          source: clause,
        },
      ],
      ceiling: assemblyCeiling(bolt),
      friction,
      cautions: ['first-step-before-second', 'mark-before-turning', 'as-delivered-lubricant', 'discard-slackened'],
    });
  },
};
