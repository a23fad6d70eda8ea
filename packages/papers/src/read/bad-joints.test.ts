import { expect, test } from 'vitest';
import { brief, bytesOf, jointOf, planned, read } from '../../../../test/memory-folder.ts';

const HEAD = 'joint,rule set,layout,bolts,size,grade,system,clamped thickness [mm],lot,torque [N·m]';
const GOOD = 'GOOD,en1090-torque,ring,8,M20,10.9,HV,40,L1,';
const list = (...rows: readonly string[]) => `${[HEAD, ...rows, GOOD].join('\n')}\n`;
/** What is said of the rows; the good row at the end must be planned in every case. */
const said = (csv: string | Uint8Array) => {
  const { plan, notices } = planned({ 'joints.csv': csv });
  expect(plan.joints.map(({ tag }) => tag)).toContain('GOOD');
  return { said: notices.map(brief), plan };
};

test.each([
  ['J,en1090-torque,ring,8,M20,10.9,HV,abc,L1,', 'quantity-wanted @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,0,L1,', 'number-absurd @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,-40,L1,', 'number-absurd @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,NaN,L1,', 'quantity-wanted @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,400000,L1,', 'number-absurd @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,40 kN,L1,', 'unit-unknown @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,"1,234",L1,', 'number-ambiguous @ joints.csv, 2, clamped thickness [mm]'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,=A1*2,L1,', 'cell-formula @ joints.csv, 2, clamped thickness [mm]'],
  ['=HYPERLINK("x"),en1090-torque,ring,8,M20,10.9,HV,40,L1,', 'csv-broken @ joints.csv, 2'],
  ['"=HYPERLINK(""x"")",en1090-torque,ring,8,M20,10.9,HV,40,L1,', 'cell-formula @ joints.csv, 2, joint'],
  ['J,en1090-torque,ring,8,+M20,10.9,HV,40,L1,', 'cell-formula @ joints.csv, 2, size'],
  ['J,en1090-torque,ring,8,-M20,10.9,HV,40,L1,', 'cell-formula @ joints.csv, 2, size'],
  ['J,en1090-torque,ring,8,@M20,10.9,HV,40,L1,', 'cell-formula @ joints.csv, 2, size'],
  ['"\t=M20",en1090-torque,ring,8,M20,10.9,HV,40,L1,', 'cell-formula @ joints.csv, 2, joint'],
  ['J,en1090-torque,ring,eight,M20,10.9,HV,40,L1,', 'number-absurd @ joints.csv, 2, bolts'],
  ['J,en1090-torque,ring,0,M20,10.9,HV,40,L1,', 'number-absurd @ joints.csv, 2, bolts'],
  ['J,en1090-torque,ring,-4,M20,10.9,HV,40,L1,', 'number-absurd @ joints.csv, 2, bolts'],
  ['J,en1090-torque,ring,2.5,M20,10.9,HV,40,L1,', 'number-absurd @ joints.csv, 2, bolts'],
  ['J,en1090-torque,ring,0x10,M20,10.9,HV,40,L1,', 'number-absurd @ joints.csv, 2, bolts'],
  ['J,en1090-torque,ring,99999999,M20,10.9,HV,40,L1,', 'number-absurd @ joints.csv, 2, bolts'],
  ['J,en1090-torque,heap,8,M20,10.9,HV,40,L1,', 'layout-unreadable @ joints.csv, 2, layout'],
  ['J,en1090-torque,2x3,8,M20,10.9,HV,40,L1,', 'layout-contradicts-bolts @ joints.csv, 2, layout'],
  ['J,en1090-torque,,8,M20,10.9,HV,40,L1,', 'cell-empty @ joints.csv, 2, layout'],
  ['J,en1090-torque,ring,,M20,10.9,HV,40,L1,', 'cell-empty @ joints.csv, 2, bolts'],
  ['J,,ring,8,M20,10.9,HV,40,L1,', 'cell-empty @ joints.csv, 2, rule set'],
  [',en1090-torque,ring,8,M20,10.9,HV,40,L1,', 'cell-empty @ joints.csv, 2, joint'],
  ['J,en1090-torque,ring,8,,10.9,HV,40,L1,', 'cell-empty @ joints.csv, 2, size'],
  ['J,en1090-torque,ring,8,M20,10.9,HW,40,L1,', 'word-unknown @ joints.csv, 2, system'],
  [`${'J'.repeat(121)},en1090-torque,ring,8,M20,10.9,HV,40,L1,`, 'label-too-long @ joints.csv, 2, joint'],
  [`J,en1090-torque,ring,8,M20,10.9,HV,40,${'L'.repeat(121)},`, 'label-too-long @ joints.csv, 2, lot'],
  ['J,en1090-torque,ring,8,M20', 'row-broken @ joints.csv, 2'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,40,L1,,surplus', 'row-broken @ joints.csv, 2'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,40,"L1,', 'csv-broken @ joints.csv, 2'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,40,"L1"x,', 'csv-broken @ joints.csv, 2'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,40,L"1,', 'csv-broken @ joints.csv, 2'],
])('the row %s is refused alone: %s', (row, expected) => {
  const { said: notices, plan } = said(list(row));
  expect(notices).toEqual([expected]);
  expect(plan.joints).toHaveLength(1);
});

test('all faults of a row are said, not the first', () => {
  expect(said(list('J,en1090-torque,ring,x,M20,10.9,XX,y,L1,z')).said.toSorted()).toEqual([
    'number-absurd @ joints.csv, 2, bolts',
    'quantity-wanted @ joints.csv, 2, clamped thickness [mm]',
    'quantity-wanted @ joints.csv, 2, torque [N·m]',
    'word-unknown @ joints.csv, 2, system',
  ]);
});

test.each([
  ['J,en1090-torque,ring,8,M48,A2-70,HV,40,L1,', 'grade-not-in-size'],
  ['J,en1090-torque,ring,8,M24,9.8,HV,40,L1,', 'grade-not-in-size'],
  ['J,en1090-torque,ring,8,M23,10.9,HV,40,L1,', 'thread-unknown'],
  ['J,en1090-torque,ring,8,M20,10.8,HV,40,L1,', 'grade-unknown'],
  ['J,en1090-torque,ring,8,M20,10.9,HV,40,L9,', 'lot-unknown'],
  ['J,en1090-combined,ring,8,M24,10.9,HV,260,L2,', 'angle-not-tabulated'],
  ['J,by-feel,ring,8,M20,10.9,HV,40,L1,', 'rule-unknown'],
  ['J,as-specified,ring,8,M20,10.9,HV,40,,300', 'preload-basis-needed'],
  ['J,as-specified,ring,8,M20,10.9,HV,40,,', 'figure-needed'],
])('the joint of %s stops: %s, at its row', (row, code) => {
  const { plan } = said(list(row));
  const joint = jointOf(plan, 'J');
  expect(joint.verdict).toBe('stop');
  expect(joint.reasons.find((one) => one.code === code)?.place).toMatchObject({ file: 'joints.csv', row: 2 });
});

test('an open quotation mark costs its own row, not those above or below', () => {
  const rows = ['A', 'B', 'C', 'D'].map((tag) => GOOD.replace('GOOD', tag));
  const { said: notices, plan } = said(list(rows[0]!, rows[1]!, 'X,en1090-torque,ring,8,"M20,10.9,HV,40,L1,', rows[2]!, rows[3]!));
  expect(notices).toEqual(['csv-broken @ joints.csv, 4']);
  expect(plan.joints.map(({ tag }) => tag)).toEqual(['A', 'B', 'C', 'D', 'GOOD']);
});

test('a file full of open quotation marks is no table', () => {
  const { job, notices } = read({ 'joints.csv': list(...Array.from({ length: 60 }, (_, i) => (i % 2 === 0 ? 'X,"' : 'Y,a"b'))) });
  expect(job?.joints).toEqual([]);
  expect(notices.map(({ code }) => code)).toEqual(['csv-broken']);
});

test('a row number is the one a spreadsheet shows: blank rows count, line breaks inside a cell do not', () => {
  const csv = `${HEAD}\nA,en1090-torque,ring,8,"M20\n",10.9,HV,40,L1,\n\nB,en1090-torque,ring,x,M20,10.9,HV,40,L1,\n${GOOD}\n`;
  expect(said(csv).said).toEqual(['number-absurd @ joints.csv, 4, bolts']);
});

test('an engineer’s sequence that is no permutation stops the joint; one that cannot be read is a fault', () => {
  const csv = `joint,rule set,layout,bolts,size,grade,system,lot,sequence
A,en1090-torque,ring,4,M20,10.9,HV,L1,1 3 2 2
B,en1090-torque,ring,4,M20,10.9,HV,L1,1 3 2
C,en1090-torque,ring,4,M20,10.9,HV,L1,first the left one
GOOD,en1090-torque,ring,4,M20,10.9,HV,L1,1 3 2 4
`;
  const { said: notices, plan } = said(csv);
  expect(notices).toEqual(['positions-unreadable @ joints.csv, 4, sequence']);
  for (const tag of ['A', 'B']) {
    expect(jointOf(plan, tag).reasons.map(({ code }) => code)).toContain('sequence-wrong');
    expect(jointOf(plan, tag).sequence.list).toEqual([]);
  }
  expect(jointOf(plan, 'GOOD').sequence).toMatchObject({ pattern: 'engineer', list: [[1], [3], [2], [4]] });
});

test('friction that no fastener has is refused at its cell', () => {
  const csv = `joint,rule set,layout,bolts,size,grade,k,thread friction,bearing friction,bearing diameter [mm],friction source,bolt stress [MPa]
A,flange-bolt-stress,ring,4,M20,8.8,0.6,,,,test,200
B,flange-bolt-stress,ring,4,M20,8.8,0.04,,,,test,200
C,flange-bolt-stress,ring,4,M20,8.8,,0.7,0.12,26,test,200
D,flange-bolt-stress,ring,4,M20,8.8,,0.12,0.01,26,test,200
E,flange-bolt-stress,ring,4,M20,8.8,,0.12,,,test,200
F,flange-bolt-stress,ring,4,M20,8.8,0.15,,,,,200
GOOD,flange-bolt-stress,ring,4,M20,8.8,0.15,,,,test,200
`;
  expect(said(csv).said).toEqual([
    'friction-implausible @ joints.csv, 2, k',
    'friction-implausible @ joints.csv, 3, k',
    'friction-implausible @ joints.csv, 4, thread friction',
    'friction-implausible @ joints.csv, 5, bearing friction',
    'friction-half-given @ joints.csv, 6',
    'friction-half-given @ joints.csv, 7',
  ]);
});

test('a list of a million rows is refused in less than three seconds', () => {
  const bytes = bytesOf(`${HEAD}\n${`${GOOD}\n`.repeat(1_000_000)}`);
  const started = performance.now();
  const { job, notices } = read({ 'joints.csv': bytes });
  expect(performance.now() - started).toBeLessThan(3000);
  expect(notices.map(({ code }) => code)).toEqual(['file-too-large']);
  expect(job?.joints).toEqual([]);
});

test('line ends of an old kind count as rows too', () => {
  const { notices } = read({ 'joints.csv': `${HEAD}\r${`${GOOD}\r`.repeat(260_000)}` });
  expect(notices.map(({ code }) => code)).toEqual(['file-too-large']);
});

test('a row that is left out says all its faults at once, those of the plan with them', () => {
  const { notices } = read({
    'joints.csv': `Joint,Rule set,Layout,Bolts,Size,Grade,System,Clamp length [mm],Lot,Bolt 1,Direction,Seen from
J,en1090-torque,ring,eight,M21,11.9,HV,4o,L1,top,cw,outside
`,
  });
  expect(notices.filter(({ place }) => place?.row === 2).map(({ code, place }) => [code, place?.read])).toEqual([
    ['number-absurd', 'eight'],
    ['unit-unknown', '4o'],
    ['thread-unknown', 'M21'],
    ['grade-unknown', '11.9'],
  ]);
});
