import type { AssemblyCheck, CautionCode, EndSignal, SafeStop, StepName, ValveCaution } from '@clampwright/core';

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
}
