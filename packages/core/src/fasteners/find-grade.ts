import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { ASTM_GRADES } from './astm-grades.ts';
import type { Grade } from './grade.ts';
import { PROPERTY_CLASSES } from './iso-898-1.ts';
import { STAINLESS_CLASSES } from './iso-3506-1.ts';
import { SAE_GRADES } from './sae-j429.ts';

/** Every grade there is. A new family adds its file and one line here. */
export const GRADES: readonly Grade[] = [...PROPERTY_CLASSES, ...STAINLESS_CLASSES, ...ASTM_GRADES, ...SAE_GRADES];

const WORDS = /\b(property class|class|astm|sae|iso 898-1|iso 3506-1|asme)\b/g;

/** Spellings of one grade fall together: case, blanks, hyphens, a decimal comma, and the words around the name. */
function plain(text: string): string {
  const bare = text
    .trim()
    .toLowerCase()
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(WORDS, ' ');
  const withoutGrade = squeeze(bare.replace(/\b(grade|gr)\b\.?/g, ' '));
  // a bare number is too little to be a name: `Grade 5` stays apart from `5`
  return /^\d+$/.test(withoutGrade) ? squeeze(bare.replace(/\bgr\b\.?/g, 'grade')) : withoutGrade;
}
const squeeze = (text: string) => text.replace(/[\s\-_/]+/g, '');

const byName = new Map<string, Grade>();
for (const grade of GRADES)
  for (const name of [grade.id, ...(grade.aliases ?? [])]) if (!byName.has(plain(name))) byName.set(plain(name), grade);

/**
 * A grade by the name people write.
 *
 * @example
 * expect(findGrade('Class 10,9').value.id).toBe('10.9');
 * expect(findGrade('a4 80').value.id).toBe('A4-80');
 * expect(findGrade('ASTM A193 Gr B7').value.id).toBe('A193 B7');
 * expect(findGrade('11.9').ok).toBe(false);
 */
export function findGrade(text: string): Outcome<Grade> {
  const grade = byName.get(plain(text));
  return grade ? done(grade) : refused(notice('grade-unknown', { grade: text }));
}
