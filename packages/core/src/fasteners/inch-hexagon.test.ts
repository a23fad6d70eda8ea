import { describe, expect, test } from 'vitest';
import { inch, inInch } from '../quantity.ts';
import { findInchThread } from './find-inch-thread.ts';
import { HEX_HEADS, STRUCTURAL_HEADS } from './inch-head-dimensions.ts';
import { inchHexagon } from './inch-hexagon.ts';
import { HEAVY_HEX_NUTS, HEX_NUTS } from './inch-nut-dimensions.ts';

const flatsLaw = (d: number) => 1.5 * d + 1 / 8;

describe('the rules that ASME B18.2 built its tables on', () => {
  test.each(HEAVY_HEX_NUTS.filter(({ diameter }) => inInch(diameter) >= 0.499 && inInch(diameter) !== 0.5625))(
    'a heavy hex nut has F = 1.5 D + 1/8 in ($diameter mm)',
    ({ diameter, acrossFlats }) => expect(inInch(acrossFlats)).toBeCloseTo(flatsLaw(inInch(diameter)), 9),
  );
  test.each(STRUCTURAL_HEADS)('a structural head has F = 1.5 D + 1/8 in ($diameter mm)', ({ diameter, acrossFlats }) =>
    expect(inInch(acrossFlats)).toBeCloseTo(flatsLaw(inInch(diameter)), 9),
  );
  test.each(HEX_HEADS.filter(({ diameter }) => ![0.25, 0.3125, 0.4375, 0.5625].includes(inInch(diameter))))(
    'a hex head has F = 1.5 D ($diameter mm)',
    ({ diameter, acrossFlats }) => expect(inInch(acrossFlats)).toBeCloseTo(1.5 * inInch(diameter), 9),
  );
  test('a hex nut is wider than the head at 7/16 and 9/16 only', () => {
    const wider = HEX_NUTS.filter((nut) => HEX_HEADS.find(({ diameter }) => diameter === nut.diameter)?.acrossFlats !== nut.acrossFlats);
    expect(wider.map(({ diameter }) => inInch(diameter))).toEqual([0.4375, 0.5625]);
  });
  test.each([...HEAVY_HEX_NUTS, ...HEX_NUTS])('a nut is at most 6 % thicker than its basic thickness ($diameter mm)', (nut) => {
    expect(nut.thicknessMax).toBeGreaterThan(nut.thickness);
    expect(nut.thicknessMax / nut.thickness).toBeLessThan(1.07);
  });
});

describe('inchHexagon()', () => {
  test('has no heavy hexagon for a size without a heavy nut', () => {
    expect(inchHexagon({ ...findInchThread('1')!, diameter: inch(5) }, 'heavy-hex')).toBeUndefined();
  });
  test('gives a flange nut above 1 1/2 in no head', () => {
    expect(inchHexagon(findInchThread('2-8UN')!, 'heavy-hex')).toMatchObject({ acrossFlats: inch(3.125) });
    expect(inchHexagon(findInchThread('2-8UN')!, 'heavy-hex')?.headHeight).toBeUndefined();
  });
});
