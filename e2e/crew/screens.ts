import { AFTER } from './after-screens.ts';
import { BEFORE } from './before-screens.ts';
import { BOLTS } from './bolt-screens.ts';
import { DAY } from './day-screens.ts';
import { ELSE } from './else-screens.ts';
import { START } from './start-screens.ts';
import { TROUBLE } from './trouble-screens.ts';
import type { Screen } from './walk.ts';

/** Every screen that a crew sees, in the order in which one device comes through them. */
export const CREW_SCREENS: readonly Screen[] = [...START, ...DAY, ...BEFORE, ...BOLTS, ...ELSE, ...AFTER, ...TROUBLE];
