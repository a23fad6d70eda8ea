import type { InspectionRecord, Source } from '@clampwright/core';
import { label } from './page-words.ts';

const cited = ({ standard, edition, clause }: Source) => [standard, edition, clause].filter(Boolean).join(', ');
const listed = (bolts: InspectionRecord['open']) => bolts.map(({ joint, bolt }) => `${joint}/${bolt}`).join(', ');

/** The verdict of an inspection as an auditor reads it: what was there, how it was drawn, what was found, and what follows. */
export function inspectionText(record: InspectionRecord): string {
  const { verdict, population, sample, seed, inspection, wrench, conforming, nonconforming, open } = record;
  return [
    label(`inspected.${verdict}`),
    label('inspected.how', { method: label(`inspection.method.${inspection.method}`), source: cited(inspection.source) }),
    label('inspected.drawn', { sample, population, seed: String(seed) }),
    label('inspected.found', { conforming, nonconforming: nonconforming.length }),
    ...(wrench === undefined ? [] : [label('inspected.wrench', { wrench })]),
    ...(nonconforming.length > 0 ? [label('inspected.which', { bolts: listed(nonconforming) }), label('inspected.reject')] : []),
    ...(open.length > 0 ? [label('inspected.open', { bolts: listed(open) })] : []),
  ].join('\n');
}
