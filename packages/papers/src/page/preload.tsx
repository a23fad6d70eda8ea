import type { TighteningPlan } from '@clampwright/core';
import type { UnitSystem } from '@clampwright/words';
import { preloadFacts } from '../told/preload-facts.ts';
import { Facts, factsOf } from './facts.tsx';

/** The preload of one subgroup: what it must be, what it will be, where the figures come from. */
export const Preload = ({ tightening, units }: { readonly tightening: TighteningPlan; readonly units: UnitSystem }) => (
  <Facts facts={factsOf(preloadFacts(tightening, units))} />
);
