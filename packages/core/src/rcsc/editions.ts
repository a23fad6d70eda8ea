import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Source } from '../source.ts';

/** Editions of the RCSC specification that values differ between. AISC 360-05 and -10 follow the older, 360-16 and -22 the newest. */
export const RCSC_EDITIONS = ['2020', '2014', '2009', '2004'] as const;
export type RcscEdition = (typeof RCSC_EDITIONS)[number];

export const rcscSource = (edition: RcscEdition, clause: string, provenance: Source['provenance'] = 'memory'): Source => ({
  standard: 'RCSC Specification for Structural Joints Using High-Strength Bolts',
  edition,
  clause,
  provenance,
});

/** The edition a text names, or what is known instead. */
export function rcscEdition(text: string): Outcome<RcscEdition> {
  const edition = RCSC_EDITIONS.find((one) => one === text);
  return edition ? done(edition) : refused(notice('edition-unknown', { edition: text, known: RCSC_EDITIONS.join(', ') }));
}
