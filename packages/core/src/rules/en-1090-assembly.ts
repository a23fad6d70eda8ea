import { type Millimetre, mm } from '../quantity.ts';
import type { En1090Method } from './en-1090.ts';

/** Facts of EN 1090-2:2018 about putting a bolt group together; from memory unless marked, clause behind each. */

/** 8.3, 8.5.1: from the most rigid part of the joint to the least rigid (published). */
export const TIGHTENING_DIRECTION = 'most-rigid-to-least-rigid';

/** Where a joint is most rigid: 8.3, notes. */
export const MOST_RIGID: Readonly<Record<'cover-plate splice of I-section' | 'end plate of I-section', string>> = {
  'cover-plate splice of I-section': 'middle-of-bolt-group',
  'end plate of I-section': 'beside-flanges',
};

/** The first step of the whole group is finished before the second begins: 8.5.1 (published). */
export const secondStepMayStart = (firstStepDone: number, groupSize: number): boolean => firstStepDone >= groupSize;

/** An impact wrench may be used in the first step of the torque and combined methods, not for a step that sets the preload: 8.5.3, 8.5.4 (published). */
export const impactWrenchAllowed = (method: En1090Method, step: 'first' | 'second'): boolean =>
  step === 'first' && (method === 'torque' || method === 'combined');

/** Lots with different k_m are tightened as subgroups, each with its own torque: 8.5.1 (published). */
export const sameTorqueForLots = (meanFactors: readonly number[]): boolean => new Set(meanFactors).size <= 1;

/** The k-class holds as delivered. Exposed or interrupted: lubrication is checked; lubricated on site: a procedure test (annex H). */
export const kClassStillValid = (state: 'as delivered' | 'exposed' | 'relubricated on site'): boolean => state === 'as delivered';
export const ACTION_IF_DELAYED = 'check-lubrication-before-continuing';

/** A set tightened to the minimum preload and slackened later is discarded whole: 8.5.1. */
export const slackenedSet = (tightenedToMinimum: boolean): 'discard-set' | 'may-stay' => (tightenedToMinimum ? 'discard-set' : 'may-stay');

/** Hardened washers: class 8.8 under the part that turns, 10.9 under both: 8.2.4. */
export const hardenedWasherUnder = (propertyClass: string, turned: 'nut' | 'head'): 'nut' | 'head' | 'both' =>
  propertyClass === '10.9' ? 'both' : turned;

/** Largest step between plates of one layer: 2 mm in general, 1 mm where preloaded: 8.3 (published). */
export const STEP_BETWEEN_PLATES: { readonly general: Millimetre; readonly preloaded: Millimetre } = { general: mm(2), preloaded: mm(1) };

/** Packing plates: at least 2 mm thick, at most three of them: 8.3 (published). */
export const packingAllowed = (thickness: Millimetre, plates: number): boolean => thickness >= 2 && plates <= 3;

/** Accuracy asked of a torque wrench, share of reading, and when it is checked: 8.5.1 (2008 wording for the intervals). */
export const WRENCH_RULES = {
  'torque-method-any-step': { deviation: 0.04 },
  'combined-method-first-step': { deviation: 0.1 },
  'inspection torque wrench': { deviation: 0.04 },
} as const;
export const WRENCH_CHECK_INTERVAL = {
  'torque-method': 'weekly',
  'combined-method-first-step': 'yearly',
  'after-impact-fall-overload': 'immediately',
} as const;
