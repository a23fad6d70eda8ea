import type { RoundPlan } from '@clampwright/core';
import { ENGLISH_WORDS } from '@clampwright/words';

/** How a round goes over the joint, with the bolts it begins with. */
export function wayText(way: RoundPlan['way'], bolts: number, { label } = ENGLISH_WORDS): string {
  const half = Math.floor(bolts / 2);
  return label(`way.${way}`, { last: bolts, before: bolts - 1, half, opposite: half + 1 });
}
