import type { JointPlan, Plan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { JointCard } from './joint-card.tsx';

/** The cards of these joints, one after the other. */
export function CardPage({ plan, joints }: { readonly plan: Plan; readonly joints: readonly JointPlan[] }) {
  return (
    <main id="content">
      {joints.length === 0 && <p>{label('card.none')}</p>}
      {joints.map((joint) => (
        <JointCard key={joint.tag} plan={plan} joint={joint} />
      ))}
    </main>
  );
}
