import { describe, expect, test } from 'vitest';
import { inInch } from '../quantity.ts';
import { B165_FLANGES, b165Flange } from './b16.5.ts';
import { B1647_FLANGES } from './b16.47.ts';
import { boltChord, studLength } from './flange-bolting.ts';

const all = [...B165_FLANGES, ...B1647_FLANGES];
const name = ({ nps, flangeClass }: { nps: string; flangeClass: number }) => `NPS ${nps} Class ${flangeClass}`;

describe('the flange tables', () => {
  test('hold every size of ASME B16.5 and of B16.47 Series A', () => {
    const count = (rating: number) => B165_FLANGES.filter(({ flangeClass }) => flangeClass === rating).length;
    expect([150, 300, 400, 600, 900, 1500, 2500].map(count)).toEqual([20, 20, 20, 20, 19, 19, 14]);
    expect(B1647_FLANGES.length).toBe(4 * 18 + 12);
  });
  test.each(all.map((flange) => [`${flange.standard} ${name(flange)}`, flange] as const))(
    '%s: bolts in fours, hole circle inside the edge and outside the raised face, room for a heavy hex nut between neighbours',
    (_name, flange) => {
      expect(flange.bolts % 4).toBe(0);
      expect(flange.boltCircle + flange.hole).toBeLessThan(flange.outsideDiameter);
      expect(flange.boltCircle - flange.hole).toBeGreaterThan(flange.raisedFace - 0.1);
      const flats = 1.5 * inInch(flange.boltDiameter) + 1 / 8;
      expect(inInch(boltChord(flange.boltCircle, flange.bolts))).toBeGreaterThan(flats * 1.15);
    },
  );
  test('sizes of one class grow with the pipe', () => {
    for (const list of [B165_FLANGES]) {
      for (const rating of new Set(list.map(({ flangeClass }) => flangeClass))) {
        const circles = list.filter(({ flangeClass }) => flangeClass === rating).map(({ boltCircle }) => boltCircle);
        expect(circles).toEqual([...circles].sort((a, b) => a - b));
      }
    }
  });
});

describe('studLength()', () => {
  // ASME B16.5-2009: the printed length, but for the largest sizes, where it is 1/4 in longer
  test('gives the printed length but for six flanges of Class 150 to 1500', () => {
    const other = B165_FLANGES.filter(
      (flange) => ![400, 2500].includes(flange.flangeClass) && Math.abs(studLength(flange) - flange.studLength) > 0.01,
    );
    expect(other.length).toBe(6);
    for (const flange of other) expect(inInch(flange.studLength) - inInch(studLength(flange))).toBeCloseTo(0.25, 6);
  });
  test('does the same for Class 400 and 2500, at most 1/4 in short', () => {
    for (const flange of B165_FLANGES.filter(({ flangeClass }) => [400, 2500].includes(flangeClass))) {
      const short = inInch(flange.studLength) - inInch(studLength(flange));
      expect([0, 0.25]).toContainEqual(Math.round(short * 1e6) / 1e6);
    }
  });
});

describe('b165Flange()', () => {
  test.each(['1-1/2', '1 1/2', '1.5', 'NPS 1 1/2', '1-1/2"'])('reads %s', (nps) => {
    expect(b165Flange(nps, 150)).toMatchObject({ ok: true, value: { nps: '1 1/2' } });
  });
  test('takes Class 1500 for a small flange of Class 900', () => {
    const [small, large] = [b165Flange('2', 900), b165Flange('2', 1500)];
    expect(small.ok && large.ok && small.value.boltCircle === large.value.boltCircle).toBe(true);
  });
});
