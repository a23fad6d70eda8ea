import { DRAFT_SCREENS, FIRST_SCREENS } from './draft-screens.ts';
import { SIGNED_IN_SCREENS, YARD_SCREENS } from './yard-screens.ts';

/** Every screen of planner, tool store and client, in the order in which one walk sees them. */
export const OFFICE_SCREENS = [...FIRST_SCREENS, ...SIGNED_IN_SCREENS, ...DRAFT_SCREENS, ...YARD_SCREENS];
