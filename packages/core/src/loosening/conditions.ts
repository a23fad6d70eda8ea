import type { Source } from '../source.ts';

/** How a fastener looks before it is loosened. */
export const FASTENER_STATES = ['fresh', 'painted', 'galvanised', 'rusted', 'sea water', 'hot-aged'] as const;
export type FastenerState = (typeof FASTENER_STATES)[number];

/** Breakaway torque over the torque it was tightened with: an assumption somebody chooses, never a result. */
export interface BreakawayRatio {
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

const practice = (clause: string): Source => ({ standard: 'common practice', clause, provenance: 'common-practice' });

/** What to plan with, by what one sees. */
export const BREAKAWAY: Readonly<Record<FastenerState, BreakawayRatio>> = {
  fresh: {
    low: 0.65,
    high: 0.9,
    source: { standard: 'published measurements', clause: '0.7 to 0.9; the lower end by 1 − P/(π·K·d)', provenance: 'published' },
  },
  painted: { low: 1, high: 1.5, source: practice('dry or painted over') },
  galvanised: { low: 1.2, high: 1.6, source: practice('galvanised, weathered') },
  rusted: { low: 1.2, high: 2, source: practice('rusted or humid') },
  'sea water': { low: 1.5, high: 2.5, source: practice('sea water or chemicals') },
  'hot-aged': { low: 1.5, high: 3, source: practice('hot service, carrier of the lubricant gone; the nut may split first') },
};

/** Share of its largest torque a tool may be planned to, so that a nut that sticks does not stall it. Common practice, no source: 85 to 90 %. */
export const USABLE_TORQUE = 0.85;
