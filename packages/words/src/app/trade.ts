import type { AssemblyCheck, CautionCode, EndSignal, InspectionMethod, SafeStop, Source, StepName, ValveCaution } from '@clampwright/core';

/** The plan's words in one language: what a card says of steps, ends, cautions and checks. */
export interface TradeTexts {
  readonly step: Readonly<Record<StepName, string>>;
  /** how the crew knows that a step is finished; `{angle}` and `{thickness}` are filled in */
  readonly end: Readonly<Record<EndSignal['kind'], string>>;
  /** what stands where a setting would */
  readonly noSetting: Readonly<Record<EndSignal['kind'], string>>;
  readonly caution: Readonly<Record<CautionCode, string>>;
  readonly check: Readonly<Record<AssemblyCheck, string>>;
  /** said with every valve that a tool turns */
  readonly valveCaution: Readonly<Record<ValveCaution, string>>;
  readonly rest: Readonly<Record<SafeStop, string>>;
  /** how a joint is looked at afterwards */
  readonly inspection: Readonly<Record<InspectionMethod, string>>;
  /** how far a number may be relied on; nothing where a standard was read */
  readonly provenance: Readonly<Record<Exclude<Source['provenance'], 'published'>, string>>;
  /** who signs */
  readonly role: Readonly<Record<Role, string>>;
  /** what stands before the labels of a setting: `gear 2, step 7` */
  readonly scale: Readonly<Record<ScaleName, string>>;
}

export type Role = 'crew' | 'inspector' | 'planner' | 'client';
export type ScaleName = 'gear' | 'step' | 'pump pressure' | 'air pressure' | 'scale';
