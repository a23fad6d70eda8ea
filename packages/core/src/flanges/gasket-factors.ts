import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Megapascal, psi } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Suggested, non-mandatory design values of a gasket; not an assembly stress. */
export interface GasketFactors {
  readonly gasket: string;
  /** gasket factor */
  readonly m: number;
  /** least design seating stress */
  readonly y: Megapascal;
  readonly source: Source;
}

const published: Source = { standard: 'ASME BPVC VIII-1', edition: '2015', clause: 'Appendix 2, Table 2-5.1', provenance: 'published' };
const recalled: Source = { ...published, provenance: 'memory' };

type Row = readonly [gasket: string, m: number, yPsi: number, source: Source];
/** One family of metallic gaskets by the metal it is made of. */
const family = (name: string, source: Source, ...rows: readonly (readonly [metal: string, m: number, yPsi: number])[]): readonly Row[] =>
  rows.map(([metal, m, yPsi]) => [`${name}, ${metal}`, m, yPsi, source]);

// biome-ignore format: a table is read by its columns
const ROWS: readonly Row[] = [
  ['self-energizing (O-ring)',              0,    0,    recalled],
  ['elastomer no fabric, <75 Shore A',      0.5,  0,    published],
  ['elastomer no fabric, >=75 Shore A',     1,    200,  published],
  ['asbestos sheet 1/8 in',                 2,    1600, recalled],
  ['asbestos sheet 1/16 in',                2.75, 3700, recalled],
  ['asbestos sheet 1/32 in',                3.5,  6500, recalled],
  ['elastomer with cotton fabric',          1.25, 400,  published],
  ['elastomer with asbestos fabric, 3-ply', 2.25, 2200, recalled],
  ['elastomer with asbestos fabric, 2-ply', 2.5,  2900, recalled],
  ['elastomer with asbestos fabric, 1-ply', 2.75, 3700, recalled],
  ['vegetable fiber',                       1.75, 1100, published],
  ...family('spiral wound', recalled, ['carbon steel', 2.5, 10000]),
  ...family('spiral wound', published, ['stainless/Monel/nickel', 3, 10000]),
  ...family('corrugated jacketed', published, ['soft Al', 2.5, 2900], ['soft Cu/brass', 2.75, 3700], ['iron/soft steel', 3, 4500],
    ['Monel/4-6Cr', 3.25, 5500], ['stainless/nickel', 3.5, 6500]),
  ...family('corrugated metal', published, ['soft Al', 2.75, 3700], ['soft Cu/brass', 3, 4500], ['iron/soft steel', 3.25, 5500],
    ['Monel/4-6Cr', 3.5, 6500], ['stainless/nickel', 3.75, 7600]),
  ...family('flat jacketed', published, ['soft Al', 3.25, 5500], ['soft Cu/brass', 3.5, 6500], ['iron/soft steel', 3.75, 7600],
    ['Monel', 3.5, 8000], ['4-6Cr', 3.75, 9000], ['stainless/nickel', 3.75, 9000]),
  ...family('grooved metal', published, ['soft Al', 3.25, 5500], ['soft Cu/brass', 3.5, 6500], ['iron/soft steel', 3.75, 7600],
    ['Monel/4-6Cr', 3.75, 9000], ['stainless/nickel', 4.25, 10100]),
  ...family('solid flat metal', published, ['soft Al', 4, 8800], ['soft Cu/brass', 4.75, 13000], ['iron/soft steel', 5.5, 18000],
    ['Monel/4-6Cr', 6, 21800], ['stainless/nickel', 6.5, 26000]),
  ...family('ring joint', recalled, ['iron/soft steel', 5.5, 18000], ['Monel/4-6Cr', 6, 21800], ['stainless/nickel', 6.5, 26000]),
];

/** Gasket factors of ASME VIII-1 Appendix 2, Table 2-5.1, by type and material. */
export const GASKET_FACTORS: readonly GasketFactors[] = ROWS.map(([gasket, m, yPsi, source]) => ({ gasket, m, y: psi(yPsi), source }));

/**
 * m and y of a gasket. Never an assembly stress: a gasket tightened to y alone leaks.
 *
 * @example
 * const found = gasketFactors('flat jacketed, iron/soft steel').value;
 * expect([found.m, Math.round(inPsi(found.y))]).toEqual([3.75, 7600]);
 * expect(gasketFactors('cardboard').notices[0].code).toBe('gasket-unknown');
 */
export function gasketFactors(gasket: string): Outcome<GasketFactors> {
  const wanted = gasket.trim().toLowerCase().replace('fibre', 'fiber');
  const found = GASKET_FACTORS.find((one) => one.gasket.toLowerCase() === wanted);
  return found ? done(found) : refused(notice('gasket-unknown', { gasket }));
}
