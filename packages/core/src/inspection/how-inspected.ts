import type { RuleSetId } from '../rules/index.ts';
import type { Source } from '../source.ts';

/** How a tightened joint is looked at, by the way it was tightened. */
export type InspectionMethod =
  | 'control torque'
  | 'angle marks'
  | 'spline'
  | 'feeler'
  | 'pre-installation and routine observed'
  | 'circular re-check';

export interface Inspection {
  readonly method: InspectionMethod;
  /** hours after the last bolt between which it is looked at */
  readonly window?: { readonly from: number; readonly until?: number };
  /** never a torque check: these bolts were turned past yield by method, or a torque proves nothing of them */
  readonly torqueProves: boolean;
  readonly source: Source;
}

const en = (clause: string): Source => ({ standard: 'EN 1090-2', edition: '2018', clause, provenance: 'memory' });
const rcsc: Source = { standard: 'RCSC', edition: '2014', clause: '9.2', provenance: 'memory' };
const pcc: Source = { standard: 'ASME PCC-1', edition: '2013', clause: 'section 11', provenance: 'memory' };
const own: Source = { standard: 'as specified', provenance: 'engineer' };
const WINDOW = { from: 12, until: 72 } as const;
/** Gasketed flanges settle: look again after at least so many hours, before pressure. */
export const RECHECK_HOURS = 4;

const observed: Inspection = { method: 'pre-installation and routine observed', torqueProves: false, source: rcsc };

const METHODS = {
  'en1090-torque': { method: 'control torque', window: WINDOW, torqueProves: true, source: en('12.5.2.4') },
  'en1090-combined': { method: 'angle marks', torqueProves: false, source: en('12.5.2.5') },
  'en1090-hrc': { method: 'spline', torqueProves: false, source: en('12.5.2.6') },
  'en1090-dti': { method: 'feeler', torqueProves: false, source: en('12.5.2.7, annex J') },
  'de-reduced-torque': { method: 'control torque', window: WINDOW, torqueProves: true, source: en('12.5.2.4, with the German annex') },
  'de-reduced-combined': { method: 'angle marks', torqueProves: false, source: en('12.5.2.5, with the German annex') },
  'rcsc-turn-of-nut': observed,
  'rcsc-calibrated-wrench': observed,
  'rcsc-twist-off': { method: 'spline', torqueProves: false, source: rcsc },
  'rcsc-dti': { method: 'feeler', torqueProves: false, source: rcsc },
  'flange-bolt-stress': {
    method: 'circular re-check',
    window: { from: RECHECK_HOURS },
    torqueProves: true,
    source: pcc,
  },
  'vdi-2230': { method: 'control torque', torqueProves: true, source: own },
  'as-specified': { method: 'control torque', torqueProves: true, source: own },
} as const satisfies Readonly<Record<RuleSetId, Inspection>>;

/**
 * How joints of a rule set are inspected. Bolts that the method turns past yield are never tried with a torque wrench.
 *
 * @example
 * expect(howInspected('en1090-combined').torqueProves).toBe(false);
 */
export const howInspected = (rule: RuleSetId): Inspection => METHODS[rule];
