/** Zones of a hazardous area, gas 0 to 2 and dust 20 to 22, with other spellings. */
export const ZONES = { none: ['no', 'kein', 'keine', 'nein'], 0: [], 1: [], 2: [], 20: [], 21: [], 22: [] } as const;

/** `Zone 1` and `ex zone 1` mean `1`. */
export const zoneText = (text: string): string => text.replace(/^(ex[\s-]*)?zone\s*/i, '');
