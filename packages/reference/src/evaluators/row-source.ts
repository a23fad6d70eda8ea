import type { Source } from '@clampwright/core';

/** The givens of a row have the row itself as their source. */
export const rowSource: Source = { standard: 'reference row', provenance: 'published' };
