import type { Told } from '../entry/kind.ts';
import type { PersonEnrolled } from '../entry/kinds/person-enrolled.ts';
import type { ToolChecked } from '../entry/kinds/tool-checked.ts';

/** What was so, elsewhere in the book, when an entry was made: always as of that entry. */
export interface Look {
  readonly enrolled: (person: string, at: Told) => Told<PersonEnrolled> | undefined;
  readonly revoked: (person: string, at: Told) => boolean;
  /** enrolled also where that was told later: the key is the same */
  readonly device: (id: string, at: Told) => 'enrolled' | 'revoked' | 'unknown';
  /** when its calibration runs out; undefined where nobody knows the tool */
  readonly due: (tool: string, at: Told) => string | undefined;
  /** the latest daily check */
  readonly check: (tool: string, at: Told) => Told<ToolChecked> | undefined;
  readonly withdrawn: (plan: string, at: Told) => boolean;
}
