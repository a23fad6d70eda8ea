/** Placing the tool, pulling, taking it off; trying a nut that does not move; another setting. Minutes, own estimates. */
export const PACE = { pull: 0.6, tried: 0.25, change: 0.3 } as const;
