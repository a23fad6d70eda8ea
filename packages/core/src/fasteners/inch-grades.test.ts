import { describe, expect, test } from 'vitest';
import { inKsi, mm } from '../quantity.ts';
import { ASTM_GRADES } from './astm-grades.ts';
import { strengthAt } from './grade.ts';
import { SAE_GRADES } from './sae-j429.ts';

const grades = [...ASTM_GRADES, ...SAE_GRADES];

describe('the inch grades', () => {
  test.each(grades)('$id: proof below yield below tensile, and no gap or overlap between its ranges', ({ ranges }) => {
    for (const { proof, yield: yieldStrength, tensile, tensileMax } of ranges) {
      if (proof !== null && yieldStrength !== null) expect(proof).toBeLessThan(yieldStrength);
      if (yieldStrength !== null) expect(yieldStrength).toBeLessThan(tensile);
      if (tensileMax !== undefined) expect(tensile).toBeLessThan(tensileMax);
    }
    ranges.slice(1).forEach(({ above, tensile }, at) => {
      expect(above).toBe(ranges[at]!.upTo);
      expect(tensile).toBeLessThanOrEqual(ranges[at]!.tensile);
    });
  });
  test('no two names are one', () => {
    const names = grades.flatMap(({ id, aliases }) => [id, ...(aliases ?? [])]);
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });
  test('A307 gives no proof load, so that no preload comes from it', () => {
    const a307 = ASTM_GRADES.find(({ id }) => id === 'A307 Grade A')!;
    expect(strengthAt(a307, mm(19.05))).toMatchObject({ ok: true, value: { proof: null, yield: null } });
  });
  // ASTM F3125-15 against A325-14: the edition trap
  test('A325 above 1 in is 120 ksi by F3125 and 105 ksi by A325 up to 2014', () => {
    const at = (id: string) => strengthAt(grades.find((one) => one.id === id)!, mm(31.75));
    expect([at('F3125 A325'), at('A325-14')].map((found) => found.ok && Math.round(inKsi(found.value.tensile)))).toEqual([120, 105]);
  });
});
