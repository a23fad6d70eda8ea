import type { RequiredCheck } from '../assembly/checks.ts';
import type { ChosenSetting } from '../chart/choose-setting.ts';
import type { CivilDate } from '../date.ts';
import type { CrewDay } from '../duration/joint-time.ts';
import type { Datum, Layout } from '../job/job.ts';
import type { Notice } from '../notice/index.ts';
import type { Millimetre, Newton, NewtonMillimetre } from '../quantity.ts';
import type { CautionCode } from '../rules/caution.ts';
import type { AboveTarget, EndSignal, StepName } from '../rules/rule-set.ts';
import type { Contribution, ScatterSplit } from '../scatter/contributions.ts';
import type { TighteningList } from '../sequence/ring.ts';
import type { Cited, Source } from '../source.ts';
import type { Resilience } from '../stiffness/bolt-resilience.ts';
import type { ExpectedRotation } from '../stiffness/expected-rotation.ts';
import type { SupplyPlan } from './effort.ts';
import type { InspectionPlan } from './inspection-plan.ts';
import type { InteractionPlan } from './interaction-plan.ts';
import type { WorkPlan } from './work-plan.ts';

export type Verdict = 'ready' | 'attention' | 'stop';

/** What a crew carries: plain data, the same bytes for the same job on one engine. Described in docs/plan-format.md. */
export interface Plan {
  readonly format: 'clampwright-plan';
  readonly version: 1;
  readonly engine: string;
  readonly job: PlannedJob;
  readonly joints: readonly JointPlan[];
  readonly tools: readonly ToolState[];
  /** what concerns the job as a whole */
  readonly reasons: readonly Notice[];
  readonly sums: Sums;
}

export interface PlannedJob {
  readonly title: string;
  readonly site: string;
  readonly workDate: CivilDate;
  readonly units: 'metric' | 'US';
  readonly people: readonly { readonly name: string; readonly role: string }[];
}

export interface Sums {
  readonly joints: number;
  readonly bolts: number;
  readonly ready: number;
  readonly attention: number;
  readonly stop: number;
  readonly kit: readonly KitItem[];
  /** of the joints that do not stop */
  readonly minutes: number;
  readonly energy: number;
  /** batteries, charges and chargers of the day, where batteries are known */
  readonly supply?: SupplyPlan;
  readonly crews: readonly CrewDay[];
}

export interface ToolState {
  readonly serial: string;
  readonly name: string;
  readonly kind: string;
  readonly certificate: string;
  readonly due: CivilDate;
  readonly notices: readonly Notice[];
}

/** One slice of a plan: all that one joint's card needs, standing alone. */
export interface JointPlan {
  readonly tag: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** every reason, stops first; each with its remedy in `words` */
  readonly reasons: readonly Notice[];
  readonly rule: { readonly id: string; readonly title: string; readonly edition: string; readonly stepWord: 'step' | 'pass' };
  readonly layout: Layout;
  readonly flange?: string;
  readonly datum?: Datum;
  readonly reactionPoint?: string;
  readonly boltCount: number;
  readonly subgroups: readonly SubgroupPlan[];
  readonly sequence: SequencePlan;
  /** how bolts act on each other, and the rounds it takes; where the members are known */
  readonly interaction?: InteractionPlan;
  /** what it takes; where every step has its setting */
  readonly work?: WorkPlan;
  /** looked at before the first bolt, in the order a crew comes to it */
  readonly checks: readonly RequiredCheck[];
  /** looked at afterwards */
  readonly inspection?: InspectionPlan;
  readonly permits: Permits;
  readonly kit: readonly KitItem[];
  readonly cautions: readonly CautionCode[];
}

export interface Permits {
  readonly pressure: boolean;
  readonly permit?: string;
  readonly zone?: string;
  readonly hotWorkPermit?: string;
  readonly gasTest?: string;
}

export interface SequencePlan {
  /** bolts in the order they are tightened */
  readonly list: TighteningList;
  /** the number painted at each position, bolt 1 first: another thing than the list */
  readonly painted: readonly number[];
  readonly pattern: 'star' | 'outwards' | 'engineer';
}

export interface SubgroupPlan {
  readonly id: string;
  readonly positions: readonly number[];
  readonly size: string;
  readonly grade: string;
  readonly system: string;
  readonly length?: Millimetre;
  readonly clampThickness?: Millimetre;
  readonly lot?: string;
  readonly turned: 'nut' | 'head';
  readonly acrossFlats?: Millimetre;
  /** absent when the rule set gave no value */
  readonly tightening?: TighteningPlan;
}

export interface TighteningPlan {
  readonly target: Cited<Newton>;
  readonly meaning: 'at least' | 'aim';
  readonly formula: string;
  readonly aboveTarget: AboveTarget;
  readonly friction?: { readonly text: string; readonly source: Source };
  readonly steps: readonly StepPlan[];
  readonly controlTorque?: Cited<NewtonMillimetre>;
  readonly ceiling?: Cited<Newton>;
  /** give of bolt and parts together, δ_S + δ_P, mm/N; where the clamped thickness is known and all of it is steel */
  readonly resilience?: Resilience;
  /** where the scatter of the last set torque comes from */
  readonly contributions?: readonly Contribution[];
  /** rotation of the turned part from snug to the planned preload, and what is left of it after each torque step before the last */
  readonly rotation?: RotationPlan;
  readonly scatter?: PreloadScatter;
  /** preload at which a bolt of the least yield strength yields under tension and torsion; an estimate when friction is a nut factor */
  readonly yieldPreload?: { readonly value: Newton; readonly estimate: boolean };
  /** share of yield at the mean preload of the last step; an estimate when friction is a nut factor */
  readonly utilisation?: { readonly value: number; readonly estimate: boolean };
}

export interface RotationPlan extends ExpectedRotation {
  readonly afterLead?: ExpectedRotation;
  readonly source: Source;
}

/** Chance that a bolt, and that all bolts of the subgroup, lie between the least they must have and harm; what decides the scatter. */
export interface PreloadScatter {
  readonly shares: ScatterSplit['shares'];
  readonly one: number;
  readonly all: number;
  readonly bolts: number;
}

export interface StepPlan {
  readonly name: StepName;
  readonly end: EndSignal;
  readonly order: 'sequence' | 'circular';
  readonly torque?: { readonly wanted: NewtonMillimetre; readonly low: NewtonMillimetre; readonly high: NewtonMillimetre };
  /** absent: this step has no setting, or none could be found */
  readonly setting?: StepSetting;
  readonly source: Source;
}

export interface StepSetting extends ChosenSetting {
  readonly tool: string;
  /** force of the reaction arm at this setting, where the arm's length is known */
  readonly reaction?: Newton;
  readonly next?: ChosenSetting;
}

/** One line of what to bring. */
export interface KitItem {
  readonly kind: 'bolt' | 'socket' | 'tool' | 'feeler gauge' | 'marker' | 'gap gauge';
  readonly text: string;
  readonly count: number;
}
