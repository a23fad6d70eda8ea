import type { Nonconformance } from '@clampwright/record';
import type { Words } from '@clampwright/words';
import { positionsText } from '../page/spoken.ts';
import { type Names, told } from './names.ts';

/** What it is about: as a person wrote it, or what contradicts what. */
export function saysOf({ number, text, notice, bolts }: Nonconformance, { label, says }: Words): string {
  const what = text ?? (notice ? says(notice) : '');
  const where = bolts.length > 0 ? ` (${label('report.at-bolts', { count: bolts.length, positions: positionsText(bolts) })})` : '';
  return `${number === undefined ? '' : `${number}: `}${what}${where}`;
}

/** Who decided what, and what a second inspection said. */
export const settledText = ({ settlements, reinspections }: Nonconformance, names: Names, { label, term }: Words): string =>
  [
    ...settlements.map(({ mention, disposition, authority, reason }) =>
      label('report.settled-by', { disposition: term(disposition), authority, reason, ...told(names, mention) }),
    ),
    ...reinspections.map(({ mention, passed }) => label('report.reinspected', { passed: passed ? 'yes' : 'no', ...told(names, mention) })),
  ].join('\n');
