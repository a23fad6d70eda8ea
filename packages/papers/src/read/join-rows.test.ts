import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brief, jointOf, planned } from '../../../../test/memory-folder.ts';

const HEAD =
  'joint,rule set,layout,bolts,positions,size,grade,system,bolt length [mm],clamped thickness [mm],lot,bolt circle [mm],tools at once,permit,reaction point,description';
const list = (...rows: readonly string[]) => `${[HEAD, ...rows].join('\n')}\n`;
const join = (...rows: readonly string[]) => {
  const { plan, notices } = planned({ 'joints.csv': list(...rows) });
  return { plan, notices: notices.map(brief) };
};
const codes = (plan: ReturnType<typeof join>['plan'], tag: string) => jointOf(plan, tag).reasons.map(({ code }) => code);

test('rows of one joint are its subgroups; what one row says of the joint holds for all', () => {
  const { plan, notices } = join(
    'J,en1090-torque,ring,8,1-4,M20,10.9,HV,75,40,L1,400,2,P-7,stop ring,Tower flange',
    'J,,,,5-8,M20,10.9,HV,90,55,L1,,,,,',
  );
  expect(notices).toEqual([]);
  const joint = jointOf(plan, 'J');
  expect(joint).toMatchObject({ boltCount: 8, title: 'Tower flange', permits: { permit: 'P-7' }, reactionPoint: 'stop ring' });
  expect(joint.subgroups.map(({ id, positions }) => [id, positions.length])).toEqual([
    ['1-4', 4],
    ['5-8', 4],
  ]);
  expect(codes(plan, 'J')).not.toContain('positions-wrong');
});

test('the order of the rows does not matter, whichever of them says what', () => {
  const rows = [
    'J,en1090-torque,ring,,1-4,M20,10.9,HV,75,40,L1,,2,,,',
    'J,,,,5-8,M20,10.9,HV,90,55,L1,400,,P-7,,Tower flange',
    'J,,,,9-12,M20,10.9,HV,90,60,L1,,,,stop ring,',
    'A,en1090-combined,2x4,,1-4,M24,10.9,HV,75,40,L2,,,,,',
    'A,,,,5-8,M24,10.9,HV,75,60,L2,,,,,',
  ];
  const plain = (lines: readonly string[]) =>
    JSON.stringify(join(...lines), (key, value: unknown) => (key === 'place' ? undefined : value));
  fc.assert(
    fc.property(fc.shuffledSubarray(rows, { minLength: rows.length, maxLength: rows.length }), (shuffled) => {
      expect(plain(shuffled)).toBe(plain(rows));
    }),
    { seed: 20_261_125, numRuns: 60 },
  );
  expect(jointOf(join(...rows).plan, 'J').boltCount).toBe(12);
});

test.each([
  ['layout', 'J,en1090-torque,2x3,,1-4,M20,10.9,HV,75,40,L1,,,,,'],
  ['rule set', 'J,en1090-combined,,,5-8,M20,10.9,HV,75,40,L1,,,,,'],
  ['tools at once', 'J,en1090-torque,,,5-8,M20,10.9,HV,75,40,L1,,4,,,'],
  ['permit', 'J,en1090-torque,,,5-8,M20,10.9,HV,75,40,L1,,,P-8,,'],
])('two rows that contradict each other in the %s are a fault of the second, and the joint is left out', (column, second) => {
  const { plan, notices } = join(
    'J,en1090-torque,2x4,,1-4,M20,10.9,HV,75,40,L1,,2,P-7,,',
    second,
    'K,en1090-torque,ring,8,,M20,10.9,HV,75,40,L1,,,,,',
  );
  expect(notices).toEqual([`joint-contradicts-itself @ joints.csv, 3, ${column}`]);
  expect(plan.joints.map(({ tag }) => tag)).toEqual(['K']);
});

test.each([
  ['overlap', '1-5', '4-8', '4, 5', 'none'],
  ['leave bolts out', '1-3', '6-8', 'none', '4, 5'],
  ['name bolts that are not there', '1-4', '5-9', '9', 'none'],
])('subgroups that %s stop the joint and name the bolts', (_, first, second, twice, missing) => {
  const { plan } = join(`J,en1090-torque,2x4,,${first},M20,10.9,HV,75,40,L1,,,,,`, `J,,,,${second},M20,10.9,HV,75,40,L1,,,,,`);
  const reason = jointOf(plan, 'J').reasons.find(({ code }) => code === 'positions-wrong');
  expect(reason?.params).toEqual({ boltCount: 8, missing, twice });
});

test('one row without positions has all the bolts of its layout', () => {
  const { plan } = join('J,en1090-torque,2x4,,,M20,10.9,HV,75,40,L1,,,,,');
  expect(jointOf(plan, 'J').subgroups[0]!.positions).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
});

test('a ring whose rows count their own bolts has as many as its last position', () => {
  const { plan } = join('J,en1090-torque,ring,4,1-4,M20,10.9,HV,75,40,L1,,,,,', 'J,,,6,5-10,M20,10.9,HV,75,40,L1,,,,,');
  expect(jointOf(plan, 'J').boltCount).toBe(10);
  expect(codes(plan, 'J')).not.toContain('positions-wrong');
});

test('a joint with one faulty, ragged or broken row is left out whole: half a ring is no ring', () => {
  for (const second of ['J,,,,x,M20,10.9,HV,75,40,L1,,,,,', 'J,,,,5-8,M20', 'J,,,,5-8,"M20,10.9,HV,75,40,L1,,,,,']) {
    const { plan, notices } = join(
      'J,en1090-torque,ring,,1-4,M20,10.9,HV,75,40,L1,,,,,',
      second,
      'K,en1090-torque,ring,8,,M20,10.9,HV,75,40,L1,,,,,',
    );
    expect(notices).toHaveLength(1);
    expect(plan.joints.map(({ tag }) => tag)).toEqual(['K']);
  }
});

test('positions beyond any joint are unreadable, however they are written', () => {
  for (const positions of ['9999', '1-9999', '4-1', '0', Array.from({ length: 3000 }, () => '1-2000').join(';')]) {
    const { notices } = join(`J,en1090-torque,ring,8,${positions},M20,10.9,HV,75,40,L1,,,,,`);
    expect(notices).toEqual(['positions-unreadable @ joints.csv, 2, positions']);
  }
});
