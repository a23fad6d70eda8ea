/** The rule sets, one file each; the key is how a job names them. Adding one is a file and its line here. */
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { asSpecified } from './as-specified.ts';
import { deReducedCombined, deReducedTorque } from './de-reduced.ts';
import { en1090Combined } from './en-1090-combined.ts';
import { en1090Dti } from './en-1090-dti.ts';
import { en1090Hrc } from './en-1090-hrc.ts';
import { en1090Torque } from './en-1090-torque.ts';
import { flangeBoltStress } from './flange-bolt-stress.ts';
import { rcscCalibratedWrench } from './rcsc-calibrated-wrench.ts';
import { rcscDti } from './rcsc-dti.ts';
import { rcscTurnOfNut } from './rcsc-turn-of-nut.ts';
import { rcscTwistOff } from './rcsc-twist-off.ts';
import type { RuleSet } from './rule-set.ts';
import { vdi2230 } from './vdi-2230.ts';

export const RULE_SETS = {
  'en1090-torque': en1090Torque,
  'en1090-combined': en1090Combined,
  'en1090-hrc': en1090Hrc,
  'en1090-dti': en1090Dti,
  'de-reduced-torque': deReducedTorque,
  'de-reduced-combined': deReducedCombined,
  'rcsc-turn-of-nut': rcscTurnOfNut,
  'rcsc-calibrated-wrench': rcscCalibratedWrench,
  'rcsc-twist-off': rcscTwistOff,
  'rcsc-dti': rcscDti,
  'flange-bolt-stress': flangeBoltStress,
  'vdi-2230': vdi2230,
  'as-specified': asSpecified,
} as const satisfies Readonly<Record<string, RuleSet>>;

export type RuleSetId = keyof typeof RULE_SETS;

/** The rule set of that name and the edition asked for, the newest where none is. */
export function findRuleSet(
  id: string,
  edition?: string,
): Outcome<{ readonly id: RuleSetId; readonly rule: RuleSet; readonly edition: string }> {
  if (!Object.hasOwn(RULE_SETS, id)) return refused(notice('rule-unknown', { rule: id }));
  const rule: RuleSet = RULE_SETS[id as RuleSetId];
  const chosen = edition ?? rule.editions[0]!;
  if (!rule.editions.includes(chosen)) return refused(notice('edition-unknown', { edition: chosen, known: rule.editions.join(', ') }));
  return done({ id: id as RuleSetId, rule, edition: chosen });
}

export { CAUTIONS, type CautionCode } from './caution.ts';
export { countedPreload, REDUCED_TABLE, reducedPreloadOf, reducedRotation, reducedRow } from './de-reduced-table.ts';
export { combinedRotation, type En1090Method, K1_REFERENCE, kClassAllowed, slipResistance } from './en-1090.ts';
export {
  ACTION_IF_DELAYED,
  hardenedWasherUnder,
  impactWrenchAllowed,
  kClassStillValid,
  MOST_RIGID,
  packingAllowed,
  STEP_BETWEEN_PLATES,
  sameTorqueForLots,
  secondStepMayStart,
  slackenedSet,
  TIGHTENING_DIRECTION,
  WRENCH_CHECK_INTERVAL,
  WRENCH_RULES,
} from './en-1090-assembly.ts';
export { feelerThickness } from './en-1090-dti.ts';
export { CONTROL_SHARE, FIRST_STEP, SECOND_STEP, torqueMargin } from './en-1090-torque.ts';
export { PLAUSIBLE_NUT_FACTOR, torqueDoubts } from './plausible-torque.ts';
export type {
  AboveTarget,
  AssemblySystem,
  BoltUnderRule,
  EndSignal,
  GivenFigures,
  KClass,
  RuleSet,
  Step,
  StepName,
  Tightening,
} from './rule-set.ts';
export { minimumPreload, minimumPreloadOf } from './shared.ts';
