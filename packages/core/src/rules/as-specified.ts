import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import type { Newton } from '../quantity.ts';
import type { Source } from '../source.ts';
import { byNutFactor, type Friction } from '../torque/friction.ts';
import { preloadForTorque, torqueForPreload } from '../torque/tightening-torque.ts';
import { torqueDoubts, yieldDoubts } from './plausible-torque.ts';
import type { BoltUnderRule, RuleSet } from './rule-set.ts';
import { snug, window, yieldCeiling } from './shared.ts';

const engineer: Source = { standard: 'engineer', provenance: 'engineer' };
/** Our window about the engineer's torque: common practice, no source. */
const WINDOW = 0.05;

/** As the engineer specified: a torque is never used without the preload it stands for, nor a preload without friction. */
export const asSpecified: RuleSet = {
  title: 'As specified by the engineer',
  editions: ['—'],
  stepWord: 'step',
  sources: [engineer],
  tighten(bolt) {
    const basis = basisOf(bolt);
    if (!basis) {
      return refused(
        bolt.given.torque === undefined && bolt.given.preload === undefined
          ? notice('figure-needed', {})
          : notice('preload-basis-needed', {}),
      );
    }
    const doubts = doubtsOf(bolt);
    if (doubts.length > 0) return refused(...doubts);
    const torque = bolt.given.torque ?? torqueForPreload(basis.friction, bolt.thread, basis.preload);
    return done({
      target: { value: basis.preload, source: engineer },
      formula: bolt.given.torque === undefined ? 'T = k · d · F' : 'F = T / (k · d)',
      meaning: 'aim',
      steps: [
        snug(engineer),
        {
          name: 'tighten',
          end: { kind: 'stall' },
          order: 'sequence',
          torque: window(torque, WINDOW),
          aim: basis.preload,
          source: engineer,
        },
      ],
      ceiling: yieldCeiling(bolt, basis.friction),
      aboveTarget: { allowed: 'with the engineer’s figure for this joint', source: engineer },
      friction: basis.friction,
      cautions: ['as-delivered-lubricant'],
      notices: [],
    });
  },
};

/** A torque given with a preload must mean a nut factor that exists; one given with friction must leave the bolt below yield. */
function doubtsOf(bolt: BoltUnderRule) {
  const { torque, preload } = bolt.given;
  if (torque === undefined) return [];
  return preload === undefined ? yieldDoubts(torque, bolt) : torqueDoubts(torque, preload, bolt.thread);
}

/** Preload and friction that belong together: two of torque, preload and friction make the third. */
function basisOf({ given, friction, thread }: BoltUnderRule): { readonly preload: Newton; readonly friction: Friction } | undefined {
  if (given.torque !== undefined && given.preload !== undefined) {
    return { preload: given.preload, friction: byNutFactor(given.torque / (given.preload * thread.diameter), engineer) };
  }
  if (friction === undefined) return undefined;
  if (given.preload !== undefined) return { preload: given.preload, friction };
  if (given.torque !== undefined) return { preload: preloadForTorque(friction, thread, given.torque), friction };
  return undefined;
}
