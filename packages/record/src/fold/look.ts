import type { Told } from '../entry/kind.ts';
import type { PersonEnrolled } from '../entry/kinds/person-enrolled.ts';
import type { ToolChecked } from '../entry/kinds/tool-checked.ts';

/** What was so, elsewhere in the book, when an entry was made: always as of that entry. */
export interface Look {
  person(id: string): { readonly enrolled?: Told<PersonEnrolled>; readonly revoked: boolean };
  /** `check`: the latest daily check; `due`: of its calibration */
  tool(serial: string): { readonly known: boolean; readonly due?: string; readonly check?: Told<ToolChecked> };
  device(id: string): { readonly enrolled: boolean; readonly revoked: boolean };
}
