import { done, type Outcome } from '../outcome.ts';
import { N, type Newton } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { boltLoad } from './bolt-loads.ts';
import type { Grade } from './grade.ts';
import type { Thread } from './thread.ts';

type Loads = Readonly<Record<string, readonly (number | null)[]>>;

/** Columns of both tables. */
const CLASSES = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'] as const;

/** Minimum ultimate tensile loads F_m,min, N, coarse thread, as printed. Source: ISO 898-1:2013 Table 4. */
const ULTIMATE: Loads = {
  M3: [2010, 2110, 2510, 2620, 3020, 4020, 4530, 5230, 6140],
  'M3.5': [2710, 2850, 3390, 3530, 4070, 5420, 6100, 7050, 8270],
  M4: [3510, 3690, 4390, 4570, 5270, 7020, 7900, 9130, 10700],
  M5: [5680, 5960, 7100, 7380, 8520, 11350, 12800, 14800, 17300],
  M6: [8040, 8440, 10000, 10400, 12100, 16100, 18100, 20900, 24500],
  M7: [11600, 12100, 14400, 15000, 17300, 23100, 26000, 30100, 35300],
  M8: [14600, 15400, 18300, 19000, 22000, 29200, 32900, 38100, 44600],
  M10: [23200, 24400, 29000, 30200, 34800, 46400, 52200, 60300, 70800],
  M12: [33700, 35400, 42200, 43800, 50600, 67400, 75900, 87700, 103000],
  M14: [46000, 48300, 57500, 59800, 69000, 92000, 104000, 120000, 140000],
  M16: [62800, 65900, 78500, 81600, 94000, 125000, 141000, 163000, 192000],
  M18: [76800, 80600, 96000, 99800, 115000, 159000, null, 200000, 234000],
  M20: [98000, 103000, 122000, 127000, 147000, 203000, null, 255000, 299000],
  M22: [121000, 127000, 152000, 158000, 182000, 252000, null, 315000, 370000],
  M24: [141000, 148000, 176000, 184000, 212000, 293000, null, 367000, 431000],
  M27: [184000, 193000, 230000, 239000, 275000, 381000, null, 477000, 560000],
  M30: [224000, 236000, 280000, 292000, 337000, 466000, null, 583000, 684000],
  M33: [278000, 292000, 347000, 361000, 416000, 576000, null, 722000, 847000],
  M36: [327000, 343000, 408000, 425000, 490000, 678000, null, 850000, 997000],
  M39: [390000, 410000, 488000, 508000, 586000, 810000, null, 1020000, 1200000],
};

/** Proof loads F_p, N, coarse thread, as printed. Source: ISO 898-1:2013 Table 5. */
const PROOF: Loads = {
  M3: [1130, 1560, 1410, 1910, 2210, 2920, 3270, 4180, 4880],
  'M3.5': [1530, 2100, 1900, 2580, 2980, 3940, 4410, 5630, 6580],
  M4: [1980, 2720, 2460, 3340, 3860, 5100, 5710, 7290, 8520],
  M5: [3200, 4400, 3980, 5400, 6250, 8230, 9230, 11800, 13800],
  M6: [4520, 6230, 5630, 7640, 8840, 11600, 13100, 16700, 19500],
  M7: [6500, 8960, 8090, 11000, 12700, 16800, 18800, 24000, 28000],
  M8: [8240, 11400, 10200, 13900, 16100, 21200, 23800, 30400, 35500],
  M10: [13000, 18000, 16200, 22000, 25500, 33700, 37700, 48100, 56300],
  M12: [19000, 26100, 23600, 32000, 37100, 48900, 54800, 70000, 81800],
  M14: [25900, 35600, 32200, 43700, 50600, 66700, 74800, 95500, 112000],
  M16: [35300, 48700, 44000, 59700, 69100, 91000, 102000, 130000, 152000],
  M18: [43200, 59500, 53800, 73000, 84500, 115000, null, 159000, 186000],
  M20: [55100, 76000, 68600, 93100, 108000, 147000, null, 203000, 238000],
  M22: [68200, 93900, 84800, 115000, 133000, 182000, null, 252000, 294000],
  M24: [79400, 109000, 98800, 134000, 155000, 212000, null, 293000, 342000],
  M27: [103000, 142000, 128000, 174000, 202000, 275000, null, 381000, 445000],
  M30: [126000, 174000, 157000, 213000, 247000, 337000, null, 466000, 544000],
  M33: [156000, 215000, 194000, 264000, 305000, 416000, null, 576000, 673000],
  M36: [184000, 253000, 229000, 310000, 359000, 490000, null, 678000, 792000],
  M39: [220000, 303000, 273000, 371000, 429000, 586000, null, 810000, 947000],
};

/** Footnotes of both tables for structural bolting, class 8.8. */
const STRUCTURAL: { readonly proof: Loads; readonly tensile: Loads } = {
  proof: { M12: [50700], M14: [68800], M16: [94500] },
  tensile: { M12: [70000], M14: [95500], M16: [130000] },
};

const table = (clause: string, provenance: 'memory' | 'computed' = 'memory'): Source => ({
  standard: 'ISO 898-1',
  edition: '2013',
  clause,
  provenance,
});
const TABLES = {
  proof: {
    loads: PROOF,
    printed: table('Table 5, as printed'),
    fine: table('Table 7: printed area × stress, to three figures', 'computed'),
  },
  tensile: {
    loads: ULTIMATE,
    printed: table('Table 4, as printed'),
    fine: table('Table 6: printed area × strength, to three figures', 'computed'),
  },
} as const;

function printedLoad(kind: 'proof' | 'tensile', grade: Grade, { designation }: Thread): number | null | undefined {
  if (grade.id === 'HR 8.8') return STRUCTURAL[kind][designation]?.[0] ?? TABLES[kind].loads[designation]?.[CLASSES.indexOf('8.8')];
  const column = (CLASSES as readonly string[]).indexOf(grade.id);
  return column < 0 ? undefined : TABLES[kind].loads[designation]?.[column];
}

/**
 * Load of a bolt of an ISO 898-1 property class, N: what the standard prints for a coarse thread (not always the plain product
 * S·A_s), else the product, rounded to three figures for the fine threads of the tables.
 *
 * - `proof` F_p, `tensile` F_m,min; class `HR 8.8` gives the footnotes for structural bolting (M12 to M16)
 *
 * Source: ISO 898-1:2013 Tables 4 to 7. The coarse tables are from memory; fine loads are computed from the printed areas.
 *
 * @example
 * expect(propertyClassLoad(findGrade('8.8').value, findThread('M6').value, 'proof').value.value).toBe(11600);
 * expect(propertyClassLoad(findGrade('10.9').value, findThread('M20').value, 'tensile').value.value).toBe(255000);
 */
export function propertyClassLoad(grade: Grade, thread: Thread, kind: 'proof' | 'tensile'): Outcome<Cited<Newton>> {
  const product = boltLoad(grade, thread, kind);
  if (!product.ok) return product;
  const printed = printedLoad(kind, grade, thread);
  if (printed) return done({ value: N(printed), source: TABLES[kind].printed });
  if (grade.family === 'ISO 898-1' && thread.series === 'fine' && thread.printedStressArea !== undefined)
    return done({ value: N(Number(product.value.toPrecision(3))), source: TABLES[kind].fine });
  return done({ value: product.value, source: { ...grade.source, clause: 'F = S·A_s', provenance: 'computed' } });
}
