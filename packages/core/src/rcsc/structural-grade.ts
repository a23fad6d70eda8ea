import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';

/** Strength groups of structural bolts: 120 ksi (A325, F1852), 150 ksi (A490, F2280), and their metric twins. */
export type StructuralGroup = '120' | '150' | '120M' | '150M';

export interface StructuralGrade {
  readonly group: StructuralGroup;
  /** made to A325 of 2014 or older: 105 ksi above 1 in, whatever the edition of the rules */
  readonly beforeF3125: boolean;
}

const GROUPS: Readonly<Record<string, StructuralGrade>> = {
  'F3125 A325': { group: '120', beforeF3125: false },
  'F3125 F1852': { group: '120', beforeF3125: false },
  'A325-14': { group: '120', beforeF3125: true },
  'F3125 A490': { group: '150', beforeF3125: false },
  'F3125 F2280': { group: '150', beforeF3125: false },
  A490: { group: '150', beforeF3125: false },
  'F3125 A325M': { group: '120M', beforeF3125: false },
  'F3125 A490M': { group: '150M', beforeF3125: false },
};

/**
 * The strength group of a structural bolt, by the id of its grade; no other grade may be pretensioned by these rules.
 *
 * @example
 * expect(structuralGrade('F3125 A325').value.group).toBe('120');
 * expect(structuralGrade('A307 Grade A').notices[0].code).toBe('grade-not-preloadable');
 */
export function structuralGrade(gradeId: string): Outcome<StructuralGrade> {
  return Object.hasOwn(GROUPS, gradeId)
    ? done(GROUPS[gradeId]!)
    : refused(notice('grade-not-preloadable', { grade: gradeId, rule: 'RCSC' }));
}
