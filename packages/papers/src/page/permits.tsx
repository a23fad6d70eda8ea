import type { JointPlan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { Facts } from './facts.tsx';

/** Papers and place: what must be in hand before the first nut moves. */
export function PermitsView({ joint }: { readonly joint: JointPlan }) {
  const { permits, reactionPoint } = joint;
  const hazardous = permits.zone !== undefined && permits.zone !== 'none';
  return (
    <section>
      <h2>{label('joint.permits')}</h2>
      <Facts
        facts={[
          permits.pressure && [label('permit.pressure'), label('permit.pressure-yes')],
          [label('permit.permit'), permits.permit ?? label(permits.pressure ? 'permit.missing' : 'permit.not-needed')],
          [label('permit.zone'), permits.zone ?? label('permit.missing')],
          hazardous && [label('permit.hot-work'), permits.hotWorkPermit ?? label('permit.missing')],
          hazardous && [label('permit.gas-test'), permits.gasTest ?? label('permit.missing')],
          [label('reaction.point'), reactionPoint ?? label('reaction.unknown')],
        ]}
      />
    </section>
  );
}
