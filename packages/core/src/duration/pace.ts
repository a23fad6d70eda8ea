import type { Source } from '../source.ts';

/** What takes time at a joint, minutes; own estimates where nobody measured the crew. */
export interface Pace {
  /** placing the tool, arm against its reaction point, taking it off */
  readonly place: number;
  /** turning, where the tool's speed is not known */
  readonly turning: number;
  /** trying a nut that does not move */
  readonly tried: number;
  /** another setting, read back by the second person */
  readonly change: number;
  /** another battery */
  readonly battery: number;
  /** from joint to joint, with tool and cards */
  readonly move: number;
  /** marking a bolt */
  readonly mark: number;
}

export const USUAL_PACE: Pace = { place: 0.45, turning: 0.15, tried: 0.25, change: 0.3, battery: 1.5, move: 12, mark: 0.1 };
export const PACE_SOURCE: Source = {
  standard: 'own estimate',
  clause: 'replace it with what the crew’s log shows',
  provenance: 'common-practice',
};
