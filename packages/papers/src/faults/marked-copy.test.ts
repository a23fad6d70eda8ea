import { readFileSync } from 'node:fs';
import { readXlsx } from 'hucre/xlsx';
import { expect, test } from 'vitest';
import { bytesOf, SOUND } from '../../../../test/memory-folder.ts';
import { readJob } from '../read/read-job.ts';
import { markedCopy } from './marked-copy.ts';

const LIST = new Uint8Array(readFileSync(new URL('../../fixtures/workbooks/list-de.xlsx', import.meta.url)));
const open = (files: Readonly<Record<string, string | Uint8Array>>) => (path: string) => {
  const file = { ...SOUND, ...files }[path];
  return file === undefined ? 'missing' : typeof file === 'string' ? bytesOf(file) : file;
};

test('faults come back in a copy of the sheet: the cell filled, with a comment, and said in a last column', async () => {
  const folder = open({ 'job.yaml': `${String(SOUND['job.yaml'])}joints: list.xlsx\n`, 'list.xlsx': LIST });
  const copy = await readXlsx((await markedCopy(folder, readJob(folder).notices))!, { readStyles: true });
  expect(copy.sheets.map(({ name }) => name)).toEqual(['What was found', 'Verbindungen']);
  const sheet = copy.sheets[1]!;
  expect(sheet.rows[4]!.slice(0, 3)).toEqual([10.9, 'S1', 'en1090-torque']);
  const wrong = sheet.cells!.get('7,7')!;
  expect(wrong.value).toBe('1.234');
  expect(wrong.comment!.text).toContain('may be read as a decimal');
  expect(wrong.style!.fill).toMatchObject({ pattern: 'lightUp' });
  expect(String(sheet.rows[7]!.at(-1))).toMatch(/^H: “1\.234” may be read/);
  // a formula is shown, and is none in the copy
  expect(sheet.cells!.get('8,7')).toMatchObject({ value: '=20+28' });
  expect(sheet.cells!.get('8,7')!.formula).toBeUndefined();
});

test('a CSV list comes back row for row as well, with its broken rows; a sound job needs no copy', async () => {
  const folder = open({
    'joints.csv': `${String(SOUND['joints.csv'])}J3,en1090-torque,ring,x,M20,10.9,HV,40,L1,top,clockwise,outside\nJ4,en1090-torque,ring\n`,
  });
  const copy = await readXlsx((await markedCopy(folder, readJob(folder).notices))!, { readStyles: true });
  const sheet = copy.sheets.find(({ name }) => name === 'joints.csv')!;
  expect(sheet.cells!.get('3,3')!.comment!.text).toContain('not plausible');
  expect(String(sheet.rows[4]!.at(-1))).toContain('The row has 3 cells');
  const sound = open({});
  expect(await markedCopy(sound, readJob(sound).notices)).toBeUndefined();
});
