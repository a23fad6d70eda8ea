import type { JointPlan } from '@clampwright/core';
import { ENGLISH_WORDS } from '@clampwright/words';

/** What is written by hand: who, when, which tool, what else happened, signatures. */
export function recordFields({ permits: { permit, gasTest } }: JointPlan, { label } = ENGLISH_WORDS) {
  return {
    pairs: [
      label('card.operator'),
      label('card.second'),
      label('card.date'),
      `${label('card.start')} / ${label('card.end')}`,
      label('card.serial'),
      label('card.daily'),
      ...(permit === undefined ? [] : [label('card.permit', { permit })]),
      ...(gasTest === undefined ? [] : [label('card.gas', { test: gasTest })]),
    ],
    remarks: label('card.remarks'),
    signatures: [label('card.sign-operator'), label('card.sign-inspector')],
  };
}

/** The fields as a page prints them. */
export function RecordFields({ joint }: { readonly joint: JointPlan }) {
  const { pairs, remarks, signatures } = recordFields(joint);
  const field = (text: string, shape = '') => (
    <div key={text} className={`field ${shape}`}>
      {text}
    </div>
  );
  return (
    <div className="fields">
      {pairs.map((text) => field(text))}
      {field(remarks, 'wide tall')}
      {signatures.map((text) => field(text))}
    </div>
  );
}
