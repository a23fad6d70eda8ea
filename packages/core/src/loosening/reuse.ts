import type { Source } from '../source.ts';

/** May a fastener that was tightened and loosened be used again? */
export type Reuse = 'never' | 'with the engineer’s leave' | 'after inspection';

export interface ReuseVerdict {
  readonly reuse: Reuse;
  readonly source: Source;
}

const rcsc: Source = { standard: 'RCSC', edition: '2014', clause: '2.3.3', provenance: 'memory' };
const assembly: Source = { standard: 'EN 1090-2', edition: '2018', clause: '8.5.1', provenance: 'memory' };
const practice: Source = {
  standard: 'common practice',
  clause: 'length against its first length, gauge on the thread',
  provenance: 'common-practice',
};

/**
 * Whether a bolt with its nut and washer may be used again after it was tightened to its preload and loosened. Touching up bolts that
 * their neighbours loosened is not reuse.
 *
 * - A490, F2280 and galvanised A325: never; plain A325: with the engineer's leave, nut run down by hand
 * - EN 14399 assemblies taken to their preload: never; bolt, nut and washer are scrap
 * - anything turned past yield by method: never
 * - flange studs and others: after inspection
 *
 * @example
 * expect(mayBeReused({ grade: 'A490', system: 'plain', galvanised: false, pastYield: false }).reuse).toBe('never');
 */
export function mayBeReused(of: {
  readonly grade: string;
  readonly system: string;
  readonly galvanised: boolean;
  readonly pastYield: boolean;
}): ReuseVerdict {
  const { grade, system, galvanised, pastYield } = of;
  if (system === 'HR' || system === 'HV' || system === 'HRC') return { reuse: 'never', source: assembly };
  if (/A490|F2280/.test(grade)) return { reuse: 'never', source: rcsc };
  if (/A325|F1852/.test(grade)) return { reuse: galvanised || pastYield ? 'never' : 'with the engineer’s leave', source: rcsc };
  return { reuse: pastYield ? 'never' : 'after inspection', source: practice };
}
