import { describe, expect, test } from 'vitest';
import { inchThread } from '../fasteners/inch-threads.ts';
import { forceOn, nominalRootArea } from '../fasteners/thread.ts';
import { inch } from '../quantity.ts';
import { torqueCoefficient } from '../torque/iso-16047.ts';
import { PCC1_TABLE_STRESS, PCC1_TORQUES } from './pcc1-torque-table.ts';

const rootArea = (diameter: never) => nominalRootArea(inchThread(diameter, diameter <= inch(1) ? 'UNC' : '8UN')!);

describe('the reference torque table', () => {
  // ASME PCC-1:2013 Table 1: adjusted, so the nut factor it implies is not one number but keeps within a narrow band
  test.each(PCC1_TORQUES)('at $diameter mm implies a nut factor of 0.19 to 0.23 bare and 0.145 to 0.18 coated', (row) => {
    const force = forceOn(rootArea(row.diameter as never), PCC1_TABLE_STRESS);
    const bare = torqueCoefficient(row.nonCoated, force, row.diameter);
    const coated = torqueCoefficient(row.coated, force, row.diameter);
    expect(bare).toBeGreaterThan(0.195);
    expect(bare).toBeLessThan(0.231);
    expect(coated).toBeGreaterThan(0.148);
    expect(coated).toBeLessThan(0.176);
    expect(coated / bare).toBeGreaterThan(0.7);
    expect(coated / bare).toBeLessThan(0.81);
  });
});
