import type { JointPlan, Plan } from '@clampwright/core';
import { Fragment } from 'react';
import { showBlock } from './card-blocks.tsx';
import { layCard } from './card-layout.ts';
import { CardSide } from './card-side.tsx';
import { StopCard } from './stop-card.tsx';

/** The card of one joint: side 1 says what to do, side 2 is ticked and signed; more sides where bolts or subgroups need them. */
export function JointCard({ plan, joint }: { readonly plan: Plan; readonly joint: JointPlan }) {
  if (joint.verdict === 'stop') return <StopCard plan={plan} joint={joint} />;
  const sides = layCard(joint, plan.job.units);
  return sides.map((blocks, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a side is its number
    <CardSide key={at} plan={plan} joint={joint} side={at + 1} sides={sides.length}>
      {blocks.map((block) => (
        <Fragment key={block.kind}>{showBlock(block, joint, plan.job.units)}</Fragment>
      ))}
    </CardSide>
  ));
}
