import type { Hash } from '../bytes/hash.ts';
import type { Found } from './found.ts';

/** Who told it, when by the device's clock, and in which entry. */
export interface Mention {
  readonly entry: Hash;
  readonly at: string;
  readonly on: string;
  readonly by?: string;
  readonly device: string;
  /** entered later from paper */
  readonly paper?: string;
}

/** A certificate that a tool was registered with. */
export interface ToldCertificate {
  readonly mention: Mention;
  readonly number: string;
  readonly due: string;
  /** of the chart's file */
  readonly chart: Hash;
}

/** A chart as read: told by whoever held it against the paper. */
export interface ToldChart {
  readonly mention: Mention;
  readonly certificate: string;
  readonly sheet: Hash;
}

export interface ToolDraft {
  readonly serial: string;
  name?: string;
  kind?: string;
  due?: string;
  chart?: Hash;
  /** the tool as read, its chart included, where a device may take settings from it; a new certificate takes it away until its own is read */
  sheet?: Hash;
  /** the same as somebody typed it, not yet read back by another */
  typed?: Hash;
  certificate?: string;
  /** every certificate and every chart that was read, in their order */
  certificates: ToldCertificate[];
  charts: ToldChart[];
  checks: {
    readonly mention: Mention;
    readonly setting: string;
    readonly passed: boolean;
    readonly readingNewtonMillimetre?: number;
    /** what it was held against */
    readonly against?: string;
  }[];
  cutOuts: { readonly mention: Mention; readonly cause: string }[];
  tightened: number;
  withdrawn: boolean;
  withdrawnFor?: string;
}

export interface BatteryDraft {
  readonly battery: string;
  name?: string;
  /** rated */
  chargeMilliampereHour?: number;
  /** bolts of each charge that was used up: from going in to coming out */
  charges: { readonly mention: Mention; readonly bolts: number }[];
  inTool?: string;
  /** `pulls`: bolts since the battery went in */
  readings: { readonly mention: Mention; readonly bars: number; readonly of: number; readonly pulls: number }[];
  boltsSinceChange: number;
  /** which of the readings is the first since it went in */
  firstReading: number;
  tightened: number;
}

export interface PersonDraft {
  readonly person: string;
  nameHash?: Hash;
  roles: string[];
  qualification?: string;
  qualifiedUntil?: string;
  revoked: boolean;
}

export interface DeviceDraft {
  readonly device: string;
  name?: string;
  key?: string;
  enrolled: boolean;
  revoked: boolean;
}

export interface LotDraft {
  readonly lot: string;
  name?: string;
  designation?: string;
  certificate?: string;
  lubricant?: string;
  tests: { readonly mention: Mention; readonly rule: string; readonly passed: boolean; readonly report?: Hash }[];
}

export interface NonconformanceDraft {
  readonly id: string;
  number?: string;
  joint?: string;
  bolts: number[];
  text?: string;
  raised?: Mention;
  settlements: {
    readonly mention: Mention;
    readonly disposition: 'replace' | 'rework' | 'use as is';
    readonly authority: string;
    readonly reason: string;
  }[];
  reinspections: { readonly mention: Mention; readonly passed: boolean }[];
}

export interface BookDraft {
  title?: string;
  site?: string;
  plans: {
    readonly number: string;
    readonly hash: Hash;
    readonly engine: string;
    readonly mention: Mention;
    /** what it was made from */
    job?: Hash;
    withdrawn?: string;
  }[];
  notes: { readonly mention: Mention; readonly text: string; readonly joint?: string }[];
  photos: { readonly mention: Mention; readonly photo: Hash; readonly joint?: string }[];
  concessions: { readonly mention: Mention; readonly number: string; readonly text: string; readonly authority: string }[];
  handovers: { readonly mention: Mention; readonly to: string; readonly text?: string }[];
  imports: { readonly mention: Mention; readonly file: Hash; readonly name: string }[];
  retightenings: { readonly mention: Mention; readonly joint: string; readonly due?: string; readonly done?: true }[];
  unreadable: { readonly entry: Hash; readonly kind: string; readonly version: number }[];
  found: Found[];
}
