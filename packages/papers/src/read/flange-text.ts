import {
  b165Flange,
  b1647Flange,
  en1092Flange,
  findInchThread,
  findThread,
  type Millimetre,
  notice,
  type Outcome,
  type Place,
  refused,
} from '@clampwright/core';

/** What a standard flange tells about its bolts. */
export interface StandardFlange {
  readonly name: string;
  readonly boltCount: number;
  readonly size: string;
  readonly circle: Millimetre;
}

interface TableFlange {
  readonly bolts: number;
  readonly bolt: string;
  readonly boltCircle: Millimetre;
}

const SERIES_B = /16\.?47[\s,-]*(?:series\s*)?B\b/i;

/** `B16.5 NPS 8 Class 300`, `NPS 1-1/2 CL150`, `B16.47A NPS 30 Class 150`, `EN 1092-1 DN80 PN16`: dimensions from the standard's table. */
export function readFlange(text: string, place: Place): Outcome<StandardFlange> {
  const european = /\bDN\s*(\d+)\b.*?\bPN\s*(\d+)/i.exec(text);
  if (european) {
    const [dn, pn] = [Number(european[1]), Number(european[2])];
    return named(`EN 1092-1 DN${dn} PN${pn}`, en1092Flange(dn, pn), place);
  }
  const american = /\bNPS\s*([\d/ .-]*\d)["”]?\s*,?\s*(?:class|cl\.?|#)\s*(\d+)/i.exec(text);
  if (!american) return refused(notice('flange-unreadable', {}, place));
  const nps = american[1]!.trim();
  const rating = Number(american[2]);
  // Series B has other bolting, and no table of it is kept
  if (SERIES_B.test(text)) {
    return refused(notice('flange-unknown', { standard: 'ASME B16.47 Series B', size: `NPS ${nps}`, rating: `Class ${rating}` }, place));
  }
  return /16\.?47/.test(text)
    ? named(`B16.47A NPS ${nps} Class ${rating}`, b1647Flange(nps, rating), place)
    : named(`B16.5 NPS ${nps} Class ${rating}`, b165Flange(nps, rating), place);
}

function named(name: string, found: Outcome<TableFlange>, place: Place): Outcome<StandardFlange> {
  if (!found.ok) return refused(...found.notices.map((one) => ({ ...one, place })));
  return { ok: true, value: { name, boltCount: found.value.bolts, size: found.value.bolt, circle: found.value.boltCircle } };
}

/** Is a bolt size the one of the flange's table? A size that cannot be read is left for the plan to report. */
export function standardSizeFits(flange: StandardFlange, size: string): boolean {
  const [ofTable, given] = [threadOf(flange.size), threadOf(size)];
  return ofTable === undefined || given === undefined || Math.abs(ofTable.diameter - given.diameter) < 1e-6;
}

function threadOf(size: string) {
  const found = findThread(size);
  return findInchThread(size, 'flange-stud') ?? (found.ok ? found.value : undefined);
}
