import { expect, test } from 'vitest';
import { brief, read } from '../../../../test/memory-folder.ts';

const list = (...rows: string[]) => ({
  'joints.csv': `joint,rule set,bolt no,x [mm],y [mm],size,grade,system,clamped thickness [mm],lot\n${rows.join('\n')}\n`,
});
const bolt = (number: number, x: number, y: number, clamp = 40) => `J1,en1090-torque,${number},${x},${y},M20,10.9,HV,${clamp},L1`;

test('a list of single bolts gives their places, and subgroups of those that are alike', () => {
  const { job, notices } = read(list(bolt(2, 75, 0), bolt(1, 0, 0), bolt(3, -12.5, 60, 48), bolt(4, 75, 60, 48)));
  expect(notices).toEqual([]);
  const [joint] = job!.joints;
  expect(joint!.layout).toEqual({
    kind: 'group',
    bolts: [
      { x: 0, y: 0 },
      { x: 75, y: 0 },
      { x: -12.5, y: 60 },
      { x: 75, y: 60 },
    ],
  });
  expect(joint!.subgroups.map(({ id, positions, clampThickness }) => [id, positions, clampThickness])).toEqual([
    ['1-2', [1, 2], 40],
    ['3-4', [3, 4], 48],
  ]);
});

test('a bolt that is missing or there twice is said', () => {
  const gap = read(list(bolt(1, 0, 0), bolt(3, 75, 0)));
  expect(gap.notices.map(brief)).toEqual(['bolt-list-uneven @ joints.csv, 3, bolt no']);
  expect(gap.notices[0]!.params).toMatchObject({ bolts: '2' });
  expect(read(list(bolt(1, 0, 0), bolt(1, 75, 0))).notices.map(({ code }) => code)).toEqual(['bolt-list-uneven']);
});
