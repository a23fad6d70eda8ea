import type { JointPlan } from '@clampwright/core';
import { label } from '@clampwright/words';

/** What is written by hand: who, when, which tool, what else happened, signatures. */
export function RecordFields({ joint }: { readonly joint: JointPlan }) {
  const field = (text: string, shape = '') => <div className={`field ${shape}`}>{text}</div>;
  const { permit, gasTest } = joint.permits;
  return (
    <div className="fields">
      {field(label('card.operator'))}
      {field(label('card.second'))}
      {field(label('card.date'))}
      {field(`${label('card.start')} / ${label('card.end')}`)}
      {field(label('card.serial'))}
      {field(label('card.daily'))}
      {permit !== undefined && field(label('card.permit', { permit }))}
      {gasTest !== undefined && field(label('card.gas', { test: gasTest }))}
      {field(label('card.remarks'), 'wide tall')}
      {field(label('card.sign-operator'))}
      {field(label('card.sign-inspector'))}
    </div>
  );
}
