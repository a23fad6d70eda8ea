import { describe, expect, test } from 'vitest';
import { findGrade, GRADES } from './find-grade.ts';

describe('findGrade()', () => {
  test('finds every grade under its id and each of its other spellings', () => {
    for (const grade of GRADES)
      for (const name of [grade.id, ...(grade.aliases ?? [])]) {
        const found = findGrade(name);
        expect(found.ok && found.value.id, name).toBe(grade.id);
      }
  });
  test.each([
    ['8,8', '8.8'],
    ['Class 10.9', '10.9'],
    ['property class 12.9', '12.9'],
    ['HV 10.9', '10.9'],
    ['hr8.8', 'HR 8.8'],
    ['A4 80', 'A4-80'],
    ['a2-70', 'A2-70'],
    ['ASTM A193 B7', 'A193 B7'],
    ['A193 Gr. B7', 'A193 B7'],
    ['B7', 'A193 B7'],
    ['A325', 'F3125 A325'],
  ])('reads %s as %s', (text, id) => {
    const found = findGrade(text);
    expect(found.ok && found.value.id).toBe(id);
  });
  test.each(['', '8', '88', '5', '11.9', 'steel'])('refuses %j', (text) => {
    expect(findGrade(text).ok).toBe(false);
  });
});

test('in every grade yield lies below tensile strength, and proof stress, where there is one, not above yield', () => {
  for (const { id, ranges } of GRADES)
    for (const { proof, yield: yieldStress, tensile } of ranges) {
      if (yieldStress !== null) expect(yieldStress, id).toBeLessThan(tensile);
      if (proof !== null && yieldStress !== null) expect(proof, id).toBeLessThanOrEqual(yieldStress);
    }
});
