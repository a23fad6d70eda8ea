import { drawSample, type JointPlan } from '@clampwright/core';
import type { JointDraft } from '@clampwright/record';
import type { Book } from './book.ts';

export interface DrawnBolts {
  readonly seed: number;
  readonly bolts: readonly number[];
}

/** Bolts of one joint to look at, as many as the rule set asks for; the same for the same seed. None where it asks for none. */
export function drawnBolts({ tag, boltCount, inspection }: JointPlan, seed: number): DrawnBolts {
  const asked = inspection?.sample ?? 0;
  if (asked === 0) return { seed, bolts: [] };
  const drawn = drawSample([{ tag, bolts: boltCount }], Math.min(asked, boltCount), seed);
  return { seed, bolts: drawn.ok ? (drawn.value.joints[0]?.bolts ?? []) : [] };
}

/** The seed that the first look at this joint was recorded with: nobody draws again until the bolts suit. */
export function recordedSeed(book: Book, joint: JointDraft): number | undefined {
  const first = [...joint.bolts.values()].flatMap(({ inspections }) => inspections)[0];
  const seed = first && (book.fold.find(first.mention.entry)?.entry.body as { seed?: string } | undefined)?.seed;
  return seed === undefined ? undefined : Number(seed);
}
