import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { writeXlsx } from 'hucre/xlsx';
import { describe, expect, test } from 'vitest';
import { inDegrees, inKilonewton, inNewtonMetre } from '../packages/core/src/index.ts';
import { logTables, planForms, planTables, reportSourceOf, tablesXlsx, workForms } from '../packages/papers/src/out.ts';
import { toldBook } from '../packages/papers/src/test-log.ts';
import { testPlan } from '../packages/papers/src/test-plan.ts';
import { TEST_LOG, testSource } from '../packages/record/src/test-handover.ts';
import { MADE } from './letters.ts';
import { sheetsOf } from './read-sheets.ts';

const plan = testPlan();
const book = toldBook();
const source = await reportSourceOf(testSource(book), TEST_LOG, '0.1.0');

describe('the workbook, as LibreOffice reads it', () => {
  const tables = planTables(plan);
  test('has the numbers of the plan, with their units in the headings', async () => {
    const sheets = sheetsOf(await tablesXlsx(tables, MADE));
    expect([...sheets.keys()].sort()).toEqual(tables.map(({ name }) => name).sort());
    const [head, ...rows] = sheets.get('Steps')!;
    const column = (name: string) => head!.indexOf(name);
    const steps = plan.joints.flatMap(({ tag, subgroups }) =>
      subgroups.flatMap(({ tightening }) => (tightening?.steps ?? []).map((step) => ({ tag, step }))),
    );
    expect(rows).toHaveLength(steps.length);
    for (const [at, { tag, step }] of steps.entries()) {
      const row = rows[at]!;
      expect(row[column('Joint')]).toBe(tag);
      if (step.setting) {
        expect(Number(row[column('Torque of the setting [N·m]')])).toBeCloseTo(inNewtonMetre(step.setting.torque), 6);
        expect(Number(row[column('Preload, mean [kN]')])).toBeCloseTo(inKilonewton(step.setting.preload), 6);
      }
      if (step.end.kind === 'mark at angle') expect(Number(row[column('Angle of the mark [°]')])).toBeCloseTo(inDegrees(step.end.angle), 6);
    }
    const tools = sheets.get('Tools')!;
    expect(tools.slice(1).map((row) => row[3])).toEqual(plan.tools.map(({ due }) => due));
  });

  test('freezes the headings and filters them', async () => {
    const files = unzipSync(await tablesXlsx(tables, MADE));
    const sheet = strFromU8(files['xl/worksheets/sheet1.xml']!);
    expect(sheet).toMatch(/<pane [^>]*ySplit="1"[^>]*state="frozen"/);
    expect(sheet).toMatch(new RegExp(`<autoFilter ref="A1:Q${tables[0]!.rows.length + 1}"`));
  });

  test('has the whole log: every entry by its hash, every bolt with the instant it was told', async () => {
    const sheets = sheetsOf(await tablesXlsx(await logTables(source), MADE));
    const entries = sheets.get('Entries')!.slice(1);
    expect(entries.map((row) => row.at(-1))).toEqual(book.entries.map(({ hash }) => hash));
    const work = sheets.get('Bolts tightened')!.slice(1);
    expect(work[0]![8]).toBe('2026-11-25 00:10:00');
    expect(work.filter((row) => row[0] === 'TB-R1')).toHaveLength(
      book.entries.filter(({ entry }) => entry.kind === 'bolt-tightened').length - 3 - 24,
    );
  });

  test('takes a text that begins like a formula for a text', async () => {
    const evil = { name: 'x', columns: [{ head: 'a', kind: 'text' }] as const, rows: [['=1+1'], ['@SUM(A1)']] };
    const [, ...rows] = sheetsOf(await tablesXlsx([evil], MADE))
      .values()
      .next().value!;
    expect(rows.flat()).toEqual(['=1+1', '@SUM(A1)']);
  });
});

/** A client's form as a client makes one: names, a style of their own, a formula, a picture of nothing of ours. */
async function clientForm(): Promise<Uint8Array> {
  const base = await writeXlsx({
    sheets: [
      {
        name: 'Bolt record',
        rows: [['Joint', null], ['Preload', null], ['Twice', null], [], ['Bolt', 'Setting', 'By']],
        cells: new Map([
          [
            '0,1',
            { value: 'tag here', style: { font: { bold: true }, fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb: 'FFFF00' } } } },
          ],
          ['2,1', { formula: 'B2*2', value: 0 }],
        ]) as never,
      },
    ],
    namedRanges: [
      { name: 'joint.tag', range: "'Bolt record'!$B$1" },
      { name: 'joint.preload', range: "'Bolt record'!$B$2" },
      { name: 'joint.title', range: "'Bolt record'!$B$3" },
      { name: 'bolt.number', range: "'Bolt record'!$A$6" },
      { name: 'work.by', range: "'Bolt record'!$C$6" },
      { name: 'shoe.size', range: "'Bolt record'!$D$1" },
    ],
  });
  const files = unzipSync(base);
  return zipSync({ ...files, 'xl/media/mark.bin': strToU8('their own mark') });
}

describe("the client's own form", () => {
  test('is filled from the plan, keeps its look, and is computed again', async () => {
    const [filled] = planForms(await clientForm(), plan);
    const { bytes, filled: names, unknown, formulas } = filled!.form;
    expect([...names].sort()).toEqual(['bolt.number', 'joint.preload', 'joint.tag']);
    expect([...unknown].sort()).toEqual(['shoe.size', 'work.by']);
    expect(formulas).toEqual(['joint.title']);
    const rows = sheetsOf(bytes).get('Bolt record')!;
    const [joint] = plan.joints;
    const preload = inKilonewton(joint!.subgroups[0]!.tightening!.target.value);
    expect(rows[0]![1]).toBe(joint!.tag);
    expect(Number(rows[1]![1])).toBeCloseTo(preload, 6);
    expect(Number(rows[2]![1])).toBeCloseTo(2 * preload, 6);
    expect(rows.slice(5).map((row) => Number(row[0]))).toEqual(joint!.sequence.list.flat());
    const [before, after] = [unzipSync(await clientForm()), unzipSync(bytes)];
    expect(after['xl/styles.xml']).toEqual(before['xl/styles.xml']);
    expect(strFromU8(after['xl/media/mark.bin']!)).toBe('their own mark');
    const styleOf = (files: Record<string, Uint8Array>) =>
      /<c r="B1"[^>]* s="(\d+)"/.exec(strFromU8(files['xl/worksheets/sheet1.xml']!))?.[1];
    expect(styleOf(after)).toBe(styleOf(before));
    expect(styleOf(after)).toBeDefined();
  });

  test('is filled from the log, a row for every time a bolt was tightened', async () => {
    const forms = await workForms(await clientForm(), source);
    const rows = sheetsOf(forms.find(({ tag }) => tag === 'FB-S1')!.form.bytes).get('Bolt record')!;
    expect(rows.slice(5).map((row) => row[2])).toEqual(Array.from({ length: 24 }, () => 'Tobias Quell'));
  });

  test.each([
    ['no archive', new Uint8Array([1, 2, 3])],
    ['an archive of something else', zipSync({ 'a.txt': strToU8('a') })],
    ['a bomb', zipSync({ 'xl/workbook.xml': new Uint8Array(80 * 1024 * 1024) })],
    [
      'a document type with entities',
      zipSync({
        'xl/workbook.xml': strToU8('<!DOCTYPE x [<!ENTITY a "b">]><workbook/>'),
        'xl/_rels/workbook.xml.rels': strToU8('<Relationships/>'),
      }),
    ],
  ])('is refused where it is %s', (_, bytes) => {
    expect(() => planForms(bytes, plan)).toThrow(/it is no XLSX|is missing|unpacks|document type/);
  });
});
