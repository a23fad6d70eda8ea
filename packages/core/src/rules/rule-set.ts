import type { Grade, Strength } from '../fasteners/grade.ts';
import type { Thread } from '../fasteners/thread.ts';
import type { Notice } from '../notice/index.ts';
import type { Outcome } from '../outcome.ts';
import type { Megapascal, Millimetre, Newton, NewtonMillimetre, Radian } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import type { Friction } from '../torque/friction.ts';
import type { CautionCode } from './caution.ts';

export type KClass = 'K0' | 'K1' | 'K2';
export type AssemblySystem = 'HR' | 'HV' | 'HRC' | 'plain';

/** What a rule set is asked about: one bolt of a subgroup, and what is known of its lot. */
export interface BoltUnderRule {
  readonly thread: Thread;
  readonly grade: Grade;
  readonly strength: Strength;
  readonly edition: string;
  readonly system: AssemblySystem;
  /** friction of the lot as tested, or of a named table; absent where nothing is known */
  readonly friction?: Friction;
  /** does the friction come from a suitability test or certificate of this very lot? */
  readonly tested: boolean;
  readonly kClass?: KClass;
  /** sum of all clamped thicknesses with packs and washers, Σt */
  readonly clampThickness?: Millimetre;
  /** nominal bolt length */
  readonly length?: Millimetre;
  /** how many of the two outer faces slope by up to 1:20 against the bolt axis */
  readonly slopedFaces: 0 | 1 | 2;
  /** whether the bolt is retightened later, where the rule set asks */
  readonly retightened: boolean;
  /** which part the tool turns; a torque is valid only as tested */
  readonly turned: 'nut' | 'head';
  /** torque found on this lot in a pre-installation verification */
  readonly verifiedTorque?: NewtonMillimetre;
  /** the engineer's figures for this joint */
  readonly given: GivenFigures;
}

export interface GivenFigures {
  readonly preload?: Newton;
  readonly torque?: NewtonMillimetre;
  /** assembly bolt stress on the root area */
  readonly boltStress?: Megapascal;
}

/** How the crew knows that a step is finished. */
export type EndSignal =
  | { readonly kind: 'firm contact' }
  /** the tool stops, or the wrench clicks, at its set torque */
  | { readonly kind: 'stall' }
  | { readonly kind: 'mark at angle'; readonly angle: Radian; readonly minus: Radian; readonly plus: Radian }
  | { readonly kind: 'spline off' }
  | { readonly kind: 'outer socket stops' }
  | { readonly kind: 'indicator starts to flatten' }
  | { readonly kind: 'feeler refused'; readonly thickness: Millimetre }
  | { readonly kind: 'no nut moves' };

export type StepName =
  | 'snug'
  | 'first step'
  | 'second step'
  | 'round 1'
  | 'round 2'
  | 'round 3'
  | 'circular round'
  | 'tighten'
  | 're-check';

export interface Step {
  readonly name: StepName;
  readonly end: EndSignal;
  /** in which order the bolts are taken */
  readonly order: 'sequence' | 'circular';
  /** torque the step asks for, with the method's window; absent where the step does not end at a set torque */
  readonly torque?: { readonly wanted: NewtonMillimetre; readonly low: NewtonMillimetre; readonly high: NewtonMillimetre };
  /** preload the step aims at, N */
  readonly aim?: Newton;
  readonly source: Source;
}

/** What a rule set asks of one bolt. */
export interface Tightening {
  readonly target: Cited<Newton>;
  /** how the target came about, in the standard's own symbols */
  readonly formula: string;
  /** is the target the least a bolt may have, or what it should have? */
  readonly meaning: 'at least' | 'aim';
  readonly steps: readonly Step[];
  /** preload above which the bolt may be harmed while it is tightened */
  readonly ceiling: Cited<Newton> | null;
  /** whether a bolt may ever stand above its target for a while, and up to what */
  readonly aboveTarget: AboveTarget;
  /** torque at which the inspector's wrench must not turn the nut */
  readonly controlTorque?: Cited<NewtonMillimetre>;
  readonly friction?: Friction;
  readonly cautions: readonly CautionCode[];
  /** attention a reader must be given; a stop is a refusal instead */
  readonly notices: readonly Notice[];
}

export type AboveTarget =
  | { readonly allowed: false; readonly source: Source }
  | { readonly allowed: 'with the engineer’s figure for this joint'; readonly source: Source };

/** A method of tightening as a value. A new one is a new file beside the others and its line in the map. */
export interface RuleSet {
  readonly title: string;
  readonly editions: readonly string[];
  /** what the rule set calls one round of tightening */
  readonly stepWord: 'step' | 'pass';
  readonly sources: readonly Source[];
  /** its bolts must be delivered as preloadable assemblies of EN 14399; without a system named there is nothing to tighten */
  readonly assemblies?: 'EN 14399';
  /**
   * What a bolt must reach through besides the parts it clamps; absent, it may be a screw in a tapped part, which has no nut.
   *
   * - nut and pitch: one thread pitch beyond the nut's face, EN 1090-2:2018 8.2.2 (from memory)
   * - nut: its full thread, as by RCSC 2.3.2 and ASME PCC-1 (from memory)
   */
  readonly reach?: 'nut and pitch' | 'nut';
  readonly tighten: (bolt: BoltUnderRule) => Outcome<Tightening>;
}
