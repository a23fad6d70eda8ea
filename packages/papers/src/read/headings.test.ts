import { inKilonewton, mm } from '@clampwright/core';
import { expect, test } from 'vitest';
import { brief, jointOf, planned, read } from '../../../../test/memory-folder.ts';

const ENGLISH = `Joint Tag,Method,Layout,Qty,Bolt Size,Property Class,Assembly,Grip length (mm),Fastener lot,Bolt 1,Numbering,Viewed from
J,en1090-torque,ring,8,M20,10.9,HV,40,L1,top,cw,outside
`;
const GERMAN = `Verbindung;Regelwerk;Anordnung;Anzahl;Gewinde;Festigkeitsklasse;Garnitur;Klemmlänge [mm];Los;Schraube 1;Zählrichtung;Blickrichtung
J;en1090-torque;Ring;8;M20;10,9;HV;40,0;L1;top;im Uhrzeigersinn;outside
`;
const withoutPlaces = (csv: string | Uint8Array) => {
  const { plan, notices } = planned({ 'joints.csv': csv });
  return { notices, plan: JSON.parse(JSON.stringify(plan, (key, value: unknown) => (key === 'place' ? undefined : value))) as unknown };
};

test('English and German headings mean the same, in any order and case', () => {
  const english = withoutPlaces(ENGLISH);
  expect(english.notices).toEqual([]);
  expect(withoutPlaces(GERMAN)).toEqual(english);
  const turned = GERMAN.split('\n')
    .map((line) => line.split(';').toReversed().join(';'))
    .join('\n');
  expect(withoutPlaces(turned.toUpperCase().replaceAll('EN1090', 'en1090'))).toMatchObject({ notices: [] });
  expect(withoutPlaces(turned)).toEqual(english);
});

/** UTF-16 with or without its mark. */
function utf16(text: string, big: boolean, mark: boolean): Uint8Array {
  const all = (mark ? '\ufeff' : '') + text;
  const bytes = new Uint8Array(all.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < all.length; i += 1) view.setUint16(2 * i, all.charCodeAt(i), !big);
  return bytes;
}

test.each([
  ['UTF-8', new TextEncoder().encode(GERMAN), []],
  ['UTF-8 with its mark', new TextEncoder().encode(`\ufeff${GERMAN}`), []],
  ['UTF-16 LE with its mark', utf16(GERMAN, false, true), []],
  ['UTF-16 BE with its mark', utf16(GERMAN, true, true), []],
  ['UTF-16 LE without', utf16(GERMAN, false, false), []],
  ['UTF-16 BE without', utf16(GERMAN, true, false), []],
  ['Latin-1', Uint8Array.from(GERMAN, (letter) => letter.charCodeAt(0)), ['encoding-assumed']],
  ['decomposed umlauts', new TextEncoder().encode(GERMAN.normalize('NFD')), []],
  ['Windows line ends', new TextEncoder().encode(GERMAN.replaceAll('\n', '\r\n')), []],
  ['old line ends', new TextEncoder().encode(GERMAN.replaceAll('\n', '\r')), []],
] as const)('a list in %s reads alike', (_, bytes, codes) => {
  const found = withoutPlaces(bytes);
  expect(found.notices.map(({ code }) => code)).toEqual(codes);
  expect(found.plan).toEqual(withoutPlaces(GERMAN).plan);
});

test.each([
  ['file-empty', new Uint8Array()],
  ['file-empty', '\n\n\n'],
  ['file-empty', ';;;\n'],
  ['file-not-text', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13])],
  ['workbook-broken', Uint8Array.from([0x50, 0x4b, 3, 4, 0, 0, 0, 0, 8, 0, 77, 1, 2, 0])],
  ['workbook-old', Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0])],
  ['heading-row-missing', 'a,b,c\n1,2,3\n'],
] as const)('%s is said of a file that holds no list', (code, file) => {
  const { job, notices } = read({ 'joints.csv': file });
  expect(job?.joints).toEqual([]);
  expect(notices.map((one) => one.code)).toEqual([code]);
});

test('tabs part cells too', () => {
  expect(withoutPlaces(ENGLISH.replaceAll(',', '\t'))).toEqual(withoutPlaces(ENGLISH));
});

test('a heading that is not understood is said and passed over; a required one that is missing is a fault', () => {
  const { plan, notices } = planned({ 'joints.csv': ENGLISH.replace('Viewed from', 'Paint colour') });
  expect(notices.map(brief)).toEqual(['column-ignored @ joints.csv, 1, Paint colour']);
  expect(plan.joints).toHaveLength(1);
  const missing = read({ 'joints.csv': ENGLISH.replace('Property Class', 'Paint colour') });
  expect(missing.notices.map(({ code, params }) => [code, 'wanted' in params ? params.wanted : ''])).toEqual([
    ['column-ignored', ''],
    ['column-asked', 'grade'],
  ]);
});

test('two headings of one meaning are a fault: neither is guessed to be the right one', () => {
  const { job, notices } = read({ 'joints.csv': ENGLISH.replace('Viewed from', 'Klemmdicke [mm]') });
  expect(notices.map(brief)).toEqual(['column-twice @ joints.csv, 1, Klemmdicke [mm]']);
  expect(job?.joints).toEqual([]);
});

test('a heading with a unit of another kind is a fault', () => {
  const { notices } = read({ 'joints.csv': ENGLISH.replace('(mm)', '(kN)') });
  expect(notices.map(brief)).toEqual(['unit-unknown @ joints.csv, 1, Grip length (kN)']);
});

test.each(['[in]', '(in)', ', in', '/ in', ' [ IN ]'])('the unit of a heading may be written %s', (unit) => {
  const { plan } = planned({
    'joints.csv': ENGLISH.replaceAll(',', ';').replace('Grip length (mm)', `Grip length${unit}`).replace(';40;', ';2;'),
  });
  expect(jointOf(plan, 'J').subgroups[0]!.clampThickness).toBeCloseTo(mm(50.8), 9);
});

test('decimal commas stand in files with semicolons, and a figure that may be thousands is asked', () => {
  const head = 'joint;rule set;layout;bolts;size;grade;preload [kN];torque [N·m]\n';
  const { plan, notices } = planned({
    'joints.csv': `${head}A;as-specified;ring;4;M24;10.9;247,1;771,5\nB;as-specified;ring;4;M24;10.9;247;1.234\nC;as-specified;ring;4;M24;10.9;1.247,5;3.500,0\n`,
  });
  expect(notices.map(brief)).toEqual(['number-ambiguous @ joints.csv, 3, torque [N·m]']);
  expect(inKilonewton(jointOf(plan, 'A').subgroups[0]!.tightening!.target.value)).toBeCloseTo(247.1, 9);
  expect(inKilonewton(jointOf(plan, 'C').subgroups[0]!.tightening!.target.value)).toBeCloseTo(1247.5, 9);
});
