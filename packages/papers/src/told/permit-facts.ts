import type { JointPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type Words } from '@clampwright/words';
import { known, type ToldFact } from './fact.ts';

/** Papers and place: what must be in hand before the first nut moves. */
export function permitFacts(
  { permits, reactionPoint }: Pick<JointPlan, 'permits' | 'reactionPoint'>,
  { label, term }: Words = ENGLISH_WORDS,
): ToldFact[] {
  const hazardous = permits.zone !== undefined && permits.zone !== 'none';
  return known([
    permits.pressure && { name: label('permit.pressure'), text: label('permit.pressure-yes') },
    { name: label('permit.permit'), text: permits.permit ?? label(permits.pressure ? 'permit.missing' : 'permit.not-needed') },
    { name: label('permit.zone'), text: permits.zone === undefined ? label('permit.missing') : term(permits.zone) },
    hazardous && { name: label('permit.hot-work'), text: permits.hotWorkPermit ?? label('permit.missing') },
    hazardous && { name: label('permit.gas-test'), text: permits.gasTest ?? label('permit.missing') },
    { name: label('reaction.point'), text: reactionPoint ?? label('reaction.unknown') },
  ]);
}
