import { expect, test } from 'vitest';
import { brief, bytesOf, SOUND } from '../../../../test/memory-folder.ts';
import { MAPPING_FILE } from './heading-memory.ts';
import { readJob } from './read-job.ts';

const LIST = `Joint list of the pontoon;;;;;;;;;;;
joint;rule set;layout;bolts;Ø;grade;system;clamped thickness [mm];lot;bolt 1;direction;seen from
J1;en1090-torque;ring;8;M20;10.9;HV;40;L1;top;clockwise;outside
`;
const folder = (files: Readonly<Record<string, string>>, means: Parameters<typeof readJob>[1] = {}) =>
  readJob((path) => {
    const file = { ...SOUND, 'joints.csv': LIST, ...files }[path];
    return file === undefined ? 'missing' : typeof file === 'string' ? bytesOf(file) : file;
  }, means);
const MEANS = { means: [{ heading: 'Ø', means: 'size' }] };

test('a heading that may mean several things is asked, not guessed', () => {
  const { job, notices } = folder({});
  expect(notices.map(brief)).toEqual(['column-unclear @ joints.csv, 2, Ø']);
  expect(notices[0]!.params).toMatchObject({ candidates: 'size, bolt circle, bearing diameter' });
  expect(job!.joints).toEqual([]);
});

test('what a person says is taken, and remembered for tables with the same headings in any order', () => {
  const told = folder({}, MEANS);
  expect(told.notices).toEqual([]);
  expect(told.job!.joints).toHaveLength(1);
  const turned = LIST.split('\n')
    .map((line) => line.split(';').toReversed().join(';'))
    .join('\n');
  const later = folder({ [MAPPING_FILE]: told.mapping!, 'joints.csv': turned });
  expect(later.notices).toEqual([]);
  expect(later.job!.joints[0]!.subgroups[0]!.size).toBe('M20');
  expect(later.mapping).toBeUndefined();
  // one more column makes it another table: asked again
  const other = folder({
    [MAPPING_FILE]: told.mapping!,
    'joints.csv': LIST.replaceAll('\n', ';\n').replace('seen from;', 'seen from;title'),
  });
  expect(other.notices.map(({ code }) => code)).toEqual(['column-unclear']);
});

test('what was said of a heading settles two columns of one meaning', () => {
  const twice = LIST.replace('Ø', 'size').replace('seen from', 'Gewinde');
  expect(folder({ 'joints.csv': twice }).notices.map(({ code }) => code)).toEqual(['column-twice']);
  const settled = folder({ 'joints.csv': twice }, { means: [{ heading: 'size', means: 'size' }] });
  expect(settled.notices).toEqual([]);
  expect(settled.job!.joints[0]!.subgroups[0]!.size).toBe('M20');
});

test('a unit may be said with the meaning, and a column be passed over', () => {
  const bare = LIST.replace('clamped thickness [mm]', 'Paket').replace('Ø', 'size').replace(';40;', ';4;');
  const { job, notices } = folder(
    { 'joints.csv': bare },
    {
      means: [
        { heading: 'Paket', means: 'clamped thickness [cm]' },
        { heading: 'bolt 1', means: 'ignore' },
      ],
    },
  );
  expect(notices).toEqual([]);
  expect(job!.joints[0]!.subgroups[0]!.clampThickness).toBeCloseTo(40, 9);
  expect(job!.joints[0]!.datum).toBeUndefined();
});

test('a heading that stands nowhere, and a meaning that is none, are said', () => {
  const { notices } = folder({}, { means: [...MEANS.means, { heading: 'Weight', means: 'size' }, { heading: 'lot', means: 'price' }] });
  expect(notices.map(({ code, params }) => [code, 'heading' in params ? params.heading : ''])).toEqual([
    ['heading-map-unused', 'Weight'],
    ['heading-map-unused', 'lot'],
  ]);
});
