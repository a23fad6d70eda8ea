import { describe, expect, test } from 'vitest';
import { en1092Flange, PN_FLANGES, type PnFlange } from './en1092-1.ts';

const flanges = PN_FLANGES.map(({ dn, pn }): PnFlange => {
  const found = en1092Flange(dn, pn);
  if (!found.ok) throw new Error(`no DN ${dn} PN ${pn}`);
  return found.value;
});

describe.each(flanges.map((flange) => [flange.dn, flange.pn, flange] as const))('DN %s PN %s', (_dn, _pn, flange) => {
  test('its bolts come in fours', () => {
    expect(flange.bolts % 4).toBe(0);
  });
  test('its holes lie inside the rim and outside the bore', () => {
    expect(flange.boltCircle + flange.hole).toBeLessThan(flange.outsideDiameter);
    expect(flange.boltCircle - flange.hole).toBeGreaterThan(flange.dn);
  });
  test('its nuts have room beside each other: chord at least 1.9 bolt diameters', () => {
    const chord = flange.boltCircle * Math.sin(Math.PI / flange.bolts);
    expect(chord).toBeGreaterThan(1.9 * Number(flange.bolt.slice(1)));
  });
});

test('within one pressure outside diameter and bolt circle grow with DN', () => {
  for (const pn of new Set(flanges.map((flange) => flange.pn))) {
    const sizes = flanges.filter((flange) => flange.pn === pn);
    for (const [at, flange] of sizes.entries()) {
      if (at === 0) continue;
      expect(flange.outsideDiameter).toBeGreaterThan(sizes[at - 1]!.outsideDiameter);
      expect(flange.boltCircle).toBeGreaterThan(sizes[at - 1]!.boltCircle);
    }
  }
});

test('within one DN a higher pressure never has a smaller flange', () => {
  for (const flange of flanges)
    for (const other of flanges.filter((one) => one.dn === flange.dn && one.pn > flange.pn)) {
      expect(other.outsideDiameter).toBeGreaterThanOrEqual(flange.outsideDiameter);
      expect(other.boltCircle).toBeGreaterThanOrEqual(flange.boltCircle);
    }
});
