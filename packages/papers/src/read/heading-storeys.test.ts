import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { headingMemory } from './heading-memory.ts';
import { pairedHeadings } from './heading-storeys.ts';
import { readChart } from './read-chart.ts';
import { readHead, readTable } from './table.ts';

const memory = (now: Parameters<typeof headingMemory>[1] = []) => headingMemory(() => 'missing', now);
const wanted = { table: 'joints', required: ['tag', 'size'], memory: memory() } as const;
const bytes = (text: string) => new TextEncoder().encode(text);

const knows = (heading: string) => ['joint', 'bolt size', 'bolt', 'grade', 'preload', 'bolt length'].includes(heading.toLowerCase());

test.each([
  ['a heading over two columns', ['Joint', 'Bolt', ''], ['', 'Size', 'Length'], ['Joint', 'Bolt Size', 'Bolt Length']],
  ['one merged downwards', ['Joint', 'Bolt', ''], ['Joint', 'Size', 'Grade'], ['Joint', 'Bolt Size', 'Grade']],
  ['units below', ['Joint', 'Preload', 'Bolt length'], ['', 'kN', '[mm]'], ['Joint', 'Preload [kN]', 'Bolt length [mm]']],
  ['what is known alone, under what is not', ['Socket', ''], ['Length', 'Grade'], ['Socket Length', 'Socket Grade']],
])('%s', (_, above, below, paired) => {
  expect(pairedHeadings(above, below, knows)).toEqual(paired);
});

test('the first row of the table is not taken for headings', () => {
  expect(pairedHeadings(['Joint', 'Bolt', 'Grade'], ['S1', 'M20', '10.9'], knows)).toBe(undefined);
});

const rows = (text: string) => {
  const table = readTable(bytes(text), 'list.csv', wanted);
  if (!table.ok) throw new Error(table.notices.map(({ code }) => code).join());
  return { headings: table.value.headings, rows: table.value.rows.map(({ row, cells }) => [row, ...cells]) };
};

test('a list with its headings in two rows below a title', () => {
  expect(rows('Pump house,,,\n,,,\nJoint,Bolt,,Preload\n,Size,Length,\nS1,M20,80,172\n')).toEqual({
    headings: ['Joint', 'Bolt Size', 'Bolt Length', 'Preload'],
    rows: [[5, 'S1', 'M20', '80', '172']],
  });
});

test('a list with its units in a row of their own, and one without', () => {
  expect(rows('Joint,Size,Bolt length,Preload\n,,in,kip\nS1,3/4,3,28\n')).toEqual({
    headings: ['Joint', 'Size', 'Bolt length [in]', 'Preload [kip]'],
    rows: [[3, 'S1', '3/4', '3', '28']],
  });
  expect(rows('Joint,Size,Bolt length\nS1,M20,80\n').rows).toEqual([[2, 'S1', 'M20', '80']]);
});

test('a workbook with merged headings above and units below reads alike, and is remembered by both rows', () => {
  const cell = (ref: string, text: string) => `<c r="${ref}" t="inlineStr"><is><t>${text}</t></is></c>`;
  const sheet = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>
    <row r="1">${cell('A1', 'Verbindung')}${cell('B1', 'Schraube')}${cell('D1', 'Stutzen')}</row>
    <row r="2">${cell('B2', 'Größe')}${cell('C2', 'Länge')}${cell('D2', 'Länge')}</row>
    <row r="3">${cell('A3', 'S1')}${cell('B3', 'M20')}${cell('C3', '80')}${cell('D3', '500')}</row></sheetData>
    <mergeCells><mergeCell ref="A1:A2"/><mergeCell ref="B1:C1"/></mergeCells></worksheet>`;
  const rels = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const book = zipSync({
    'xl/workbook.xml': strToU8(
      `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${rels}"><sheets><sheet name="A" sheetId="1" r:id="r1"/></sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="${rels}/worksheet" Target="worksheets/a.xml"/></Relationships>`,
    ),
    'xl/worksheets/a.xml': strToU8(sheet),
  });
  // a length that is not the bolt's is not taken for it
  expect(readHead(book, 'list.xlsx', wanted)).toMatchObject({ headingRow: 2, headings: ['Verbindung', 'Größe', 'Länge', 'Stutzen Länge'] });
  const said = memory([{ heading: 'Stutzen Länge', means: 'ignore' }]);
  expect(readHead(book, 'list.xlsx', { ...wanted, memory: said })).toMatchObject({ headingRow: 2 });
  expect(said.text()).toContain('stutzen länge');
});

test('a chart with its steps under one heading', () => {
  const { settings, notices } = readChart(bytes('Gear [N·m],Step,\n,1,2\n1,100,110\n2,200,220\n'), 'chart.csv', memory());
  expect(notices).toEqual([]);
  expect(settings.map(({ labels, torque }) => `${labels.join('/')}=${torque / 1000}`)).toEqual([
    '1/1=100',
    '1/2=110',
    '2/1=200',
    '2/2=220',
  ]);
});
