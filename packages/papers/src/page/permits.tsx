import type { JointPlan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { permitFacts } from '../told/permit-facts.ts';
import { Facts, factsOf } from './facts.tsx';

/** Papers and place: what must be in hand before the first nut moves. */
export const PermitsView = ({ joint }: { readonly joint: JointPlan }) => (
  <section>
    <h2>{label('joint.permits')}</h2>
    <Facts facts={factsOf(permitFacts(joint))} />
  </section>
);
