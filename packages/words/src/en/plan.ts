import type { EndSignal, StepName } from '@clampwright/core';

export const STEP_TEXTS: Readonly<Record<StepName, string>> = {
  snug: 'Snug',
  'first step': 'First step',
  'second step': 'Second step',
  'round 1': 'Pass 1',
  'round 2': 'Pass 2',
  'round 3': 'Pass 3',
  'circular round': 'Circular passes',
  tighten: 'Tighten',
  're-check': 'Re-check after 4 h',
};

/** How the crew knows the step is finished; ICU message format. */
export const END_TEXTS: Readonly<Record<EndSignal['kind'], string>> = {
  'firm contact': 'plies in firm contact, full effort of one hand on a spanner',
  stall: 'tool stalls or clicks at the setting',
  'mark at angle': 'mark turned by {angle}',
  'spline off': 'spline sheared off',
  'outer socket stops': 'outer socket stops turning',
  'indicator starts to flatten': 'indicator begins to flatten',
  'feeler refused': '{thickness} feeler no longer enters',
  'no nut moves': 'round and round until no nut moves',
};

/** What stands where a setting would. */
export const NO_SETTING_TEXTS: Readonly<Record<EndSignal['kind'], string>> = {
  'firm contact': 'no setting: by hand or at the lowest',
  stall: 'no setting found',
  'mark at angle': 'no setting: turn to the mark',
  'spline off': 'no setting: until the spline is off',
  'outer socket stops': 'no setting: until the outer socket stops',
  'indicator starts to flatten': 'no setting: until the indicator starts to flatten',
  'feeler refused': 'no setting: until the feeler is refused',
  'no nut moves': 'no setting found',
};
