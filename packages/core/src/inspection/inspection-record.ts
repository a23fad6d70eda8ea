import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { DrawnSample } from './draw-sample.ts';
import type { Inspection } from './how-inspected.ts';

/** One drawn bolt, looked at. */
export interface LookedAt {
  readonly joint: string;
  readonly bolt: number;
  readonly conforms: boolean;
}

/** An inspection as an auditor reads it: what was there, what was drawn and how, what was found, and what follows. */
export interface InspectionRecord {
  readonly verdict: 'accepted' | 'rejected' | 'not finished';
  readonly population: number;
  readonly sample: number;
  readonly seed: number;
  readonly inspection: Inspection;
  /** certified wrench of the inspector, where the method takes one; never the tool that tightened */
  readonly wrench?: string;
  readonly conforming: number;
  readonly nonconforming: readonly { readonly joint: string; readonly bolt: number }[];
  /** drawn, not looked at yet */
  readonly open: readonly { readonly joint: string; readonly bolt: number }[];
}

/**
 * What a drawn inspection comes to: any bolt that does not conform rejects it, an open one leaves it unfinished. Refuses bolts that were
 * not drawn, bolts looked at twice, a torque check where torque proves nothing, and one made with the tool that tightened: all at once.
 *
 * Source: EN 1090-2:2018 12.5.2 (from memory); the inspector's own certified wrench is common practice, no source.
 */
export function inspectionRecord(of: {
  readonly drawn: DrawnSample;
  readonly population: number;
  readonly inspection: Inspection;
  readonly looked: readonly LookedAt[];
  readonly wrench?: string;
  /** serial numbers of the tools that tightened */
  readonly tightenedWith: readonly string[];
}): Outcome<InspectionRecord> {
  const { drawn, population, inspection, looked, wrench, tightenedWith } = of;
  const key = (joint: string, bolt: number) => `${joint}/${bolt}`;
  const wanted = drawn.joints.flatMap(({ tag, bolts }) => bolts.map((bolt) => ({ joint: tag, bolt })));
  const drawnKeys = new Set(wanted.map(({ joint, bolt }) => key(joint, bolt)));
  const seen = new Set<string>();
  const twice = looked.filter(({ joint, bolt }) => seen.size === seen.add(key(joint, bolt)).size);
  const faults = [
    ...looked
      .filter(({ joint, bolt }) => !drawnKeys.has(key(joint, bolt)))
      .map(({ joint, bolt }) => notice('inspected-not-drawn', { joint, bolt })),
    ...twice.map(({ joint, bolt }) => notice('inspected-twice', { joint, bolt })),
    ...(wrench !== undefined && !inspection.torqueProves ? [notice('torque-proves-nothing', {})] : []),
    ...(wrench !== undefined && tightenedWith.includes(wrench) ? [notice('inspected-with-own-tool', { tool: wrench })] : []),
  ];
  if (faults.length > 0) return refused(...faults);
  const nonconforming = looked.filter(({ conforms }) => !conforms).map(({ joint, bolt }) => ({ joint, bolt }));
  const open = wanted.filter(({ joint, bolt }) => !seen.has(key(joint, bolt)));
  return done({
    verdict: nonconforming.length > 0 ? 'rejected' : open.length > 0 ? 'not finished' : 'accepted',
    population,
    sample: wanted.length,
    seed: drawn.seed,
    inspection,
    ...(wrench === undefined ? {} : { wrench }),
    conforming: looked.length - nonconforming.length,
    nonconforming,
    open,
  });
}
