import type { Battery } from '../battery/battery.ts';
import type { PeakDraw } from '../battery/push.ts';
import type { Certificate, SettingChart, ToolKind } from '../chart/setting-chart.ts';
import type { CivilDate } from '../date.ts';
import type { ExecutionClass } from '../inspection/en-1090-inspection.ts';
import type { Members } from '../members/members.ts';
import type { Place } from '../notice/index.ts';
import type { Millimetre, Newton, NewtonMillimetre } from '../quantity.ts';
import type { AssemblySystem, GivenFigures, KClass } from '../rules/rule-set.ts';
import type { Point } from '../sequence/group.ts';
import type { Friction } from '../torque/friction.ts';

/** Everything a plan is made from. Read by `papers`, or typed in the app; nothing in it is resolved or judged yet. */
export interface Job {
  readonly title: string;
  readonly site: string;
  readonly workDate: CivilDate;
  readonly units: 'metric' | 'US';
  readonly conditions: Conditions;
  readonly people: readonly Person[];
  readonly joints: readonly Joint[];
  readonly tools: readonly Tool[];
  readonly lots: readonly Lot[];
  /** EN 1090-2: decides how many bolts are inspected */
  readonly executionClass?: ExecutionClass;
  /** batteries at hand, with their chargers */
  readonly batteries?: readonly Battery[];
  readonly charger?: { readonly watts: number; readonly taperMinutes: number };
  readonly crews?: number;
  readonly shiftMinutes?: number;
}

export interface Conditions {
  readonly wet: boolean;
  readonly atHeight: boolean;
  /** zone of a hazardous area where no joint says otherwise: `none`, `0`, `1`, `2`, `20`, `21`, `22` */
  readonly zone?: string;
}

export interface Person {
  readonly name: string;
  readonly role: string;
  readonly qualification?: string;
  readonly qualifiedUntil?: CivilDate;
}

/** Fasteners from one delivery: friction and k-class belong to it and to no other. */
export interface Lot {
  readonly id: string;
  readonly kClass?: KClass;
  readonly friction?: Friction;
  /** tested on this very lot, or taken from a table */
  readonly tested: boolean;
  /** part that turned in the test: a torque is valid only as tested */
  readonly testedTurning?: 'nut' | 'head';
  /** torque found in a pre-installation verification, for a calibrated wrench */
  readonly verifiedTorque?: NewtonMillimetre;
  /** a failed test blocks the lot */
  readonly failed: boolean;
  readonly lubricant?: string;
}

export interface Tool {
  readonly serial: string;
  readonly name: string;
  readonly kind: ToolKind;
  readonly chart: SettingChart;
  /** all certificates of the tool, where there are several; the one that counts on the day is the chart's */
  readonly certificates?: readonly (Pick<Certificate, 'number' | 'calibrated' | 'due'> & { readonly chart: string })[];
  /** square from the drive's axis to the contact of the reaction arm */
  readonly arm?: Millimetre;
  /** what the tool draws at its stall, where a bench has found it */
  readonly peak?: PeakDraw;
  /** torque the arm is rated for */
  readonly armRating?: NewtonMillimetre;
  readonly sockets: readonly Socket[];
  readonly place?: Place;
}

export interface Socket {
  readonly acrossFlats: Millimetre;
  readonly outerDiameter: Millimetre;
}

/** Where bolt 1 is, which way numbering runs, from which side one looks: on plan, tag, card and screen alike. */
export interface Datum {
  readonly boltOne: string;
  readonly direction: 'clockwise' | 'counter-clockwise';
  readonly viewedFrom: string;
}

export type Layout =
  | { readonly kind: 'ring'; readonly boltCount: number; readonly circle?: Millimetre }
  | { readonly kind: 'group'; readonly bolts: readonly Point[]; readonly stiffest?: Point };

export interface Joint {
  readonly tag: string;
  readonly title: string;
  readonly rule: string;
  readonly edition?: string;
  readonly layout: Layout;
  readonly datum?: Datum;
  readonly subgroups: readonly Subgroup[];
  /** serial numbers of the tools meant for this joint; empty: any of the job's */
  readonly tools: readonly string[];
  /** synchronous tools */
  readonly toolsAtOnce: number;
  /** the engineer's own order of bolts */
  readonly sequence?: readonly number[];
  /** standard flange the dimensions were taken from */
  readonly flange?: string;
  readonly pressure: boolean;
  readonly permit?: string;
  readonly zone?: string;
  readonly hotWorkPermit?: string;
  readonly gasTest?: string;
  readonly access: Access;
  /** what the bolts clamp, where it is known: then the plan says how bolts act on each other */
  readonly members?: Members;
  /** wanted largest |F − target|, share of target */
  readonly evenness?: number;
  /** the engineer's figure: greatest force a bolt may have for a while; opens schedules of several settings a round */
  readonly greatestForce?: Newton;
  readonly place?: Place;
}

export interface Access {
  readonly reactionPoint?: string;
  /** force the reaction point may take */
  readonly reactionLimit?: Newton;
  /** from the bolt axis to the nearest wall */
  readonly wall?: Millimetre;
}

/** Bolts of one length, grip and lot inside a joint, each with its own torque and angle. */
export interface Subgroup {
  readonly id: string;
  /** positions in the joint, 1-based */
  readonly positions: readonly number[];
  readonly size: string;
  readonly grade: string;
  readonly system: AssemblySystem;
  readonly length?: Millimetre;
  readonly clampThickness?: Millimetre;
  readonly slopedFaces: 0 | 1 | 2;
  readonly lot?: string;
  readonly kClass?: KClass;
  /** friction where no lot is named: a nut factor or coefficients with their source */
  readonly friction?: Friction;
  readonly turned: 'nut' | 'head';
  readonly retightened: boolean;
  readonly given: GivenFigures;
  readonly place?: Place;
}

export const boltCountOf = (layout: Layout): number => (layout.kind === 'ring' ? layout.boltCount : layout.bolts.length);
