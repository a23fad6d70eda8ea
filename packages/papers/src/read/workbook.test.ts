import { readFileSync } from 'node:fs';
import type { Job } from '@clampwright/core';
import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { brief, read } from '../../../../test/memory-folder.ts';

// Written by openpyxl and XlsxWriter (fixtures/workbooks/make.py), so that no writer of ours is held against its own reader.
const fixture = (name: string) => new Uint8Array(readFileSync(new URL(`../../fixtures/workbooks/${name}`, import.meta.url)));
const DE = fixture('list-de.xlsx');
const EN = fixture('list-en.xlsx');

const job = (joints: string) => `title: t
site: s
work-date: 2026-11-25
conditions: { zone: none }
joints: "${joints}"
lots:
  - { id: L1, k-class: K2, k: 0.13, variation: 0.03, tested: true, source: test }
`;
const clamps = ({ joints }: Job) =>
  Object.fromEntries(joints.map(({ tag, subgroups }) => [tag, subgroups.map(({ clampThickness }) => clampThickness)]));

test('a German workbook is read below its title, across its legend, with merged tags and decimals as numbers and as text', () => {
  const found = read({ 'job.yaml': job('list.xlsx'), 'list.xlsx': DE });
  expect(found.notices.map(brief)).toEqual([
    'rows-hidden @ list.xlsx',
    'number-ambiguous @ list.xlsx, 8, Klemmlänge [mm]',
    'cell-formula @ list.xlsx, 9, Klemmlänge [mm]',
    'cell-error @ list.xlsx, 10, Klemmlänge [mm]',
  ]);
  expect(found.notices[1]!.place).toMatchObject({ sheet: 'Verbindungen', letter: 'H', row: 8, read: '1.234' });
  // S2 holds the number 1.234, S3 the text “1.234”, which may be thousands
  expect(clamps(found.job!)).toEqual({ S1: [40.5, 48.5], S2: [1.234] });
});

test('a sheet is named behind a #, also a hidden one; one that is not there is said with those that are', () => {
  const hidden = read({ 'job.yaml': job('list.xlsx#alt'), 'list.xlsx': DE });
  expect(hidden.notices[0]!.place).toMatchObject({ file: 'list.xlsx', sheet: 'alt' });
  const wrong = read({ 'job.yaml': job('list.xlsx#Neu'), 'list.xlsx': DE });
  expect(wrong.notices[0]).toMatchObject({ code: 'sheet-missing', params: { sheets: 'Verbindungen, Legende, alt' } });
});

test('units that only a number format shows are read, and a formula by the value it was saved with', () => {
  const found = read({ 'job.yaml': job('list.xlsx'), 'list.xlsx': EN });
  expect(found.notices).toEqual([]);
  expect(Object.values(clamps(found.job!)).map(([one]) => one)).toEqual([40, 45.5]);
});

test('a wide chart is read from the sheet that its path names', () => {
  const tools = `tools:
  - serial: W-1
    name: wrench
    kind: click wrench
    repeatability: 2 %
    chart: list.xlsx#Charts
    certificate: { number: C-1, serial: W-1, calibrated: 2026-06-01, due: 2027-05-31, uncertainty: 0.5 % }
`;
  const found = read({ 'job.yaml': job('list.xlsx'), 'list.xlsx': EN, 'tools.yaml': tools });
  expect(found.notices).toEqual([]);
  expect(found.job!.tools[0]!.chart.settings.map(({ labels, torque }) => [labels.join('/'), torque / 1000])).toEqual([
    ['1/1', 100],
    ['1/2', 110],
    ['1/3', 121],
    ['2/1', 133],
    ['2/2', 146],
    ['2/3', 161],
  ]);
});

const SHEET = '<sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>joint</t></is></c></row></sheetData>';
const NS = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const book = ({
  sheet = `<worksheet ${NS}>${SHEET}</worksheet>`,
  more = {} as Record<string, Uint8Array>,
  sheets = '<sheet name="A" sheetId="1" r:id="r1"/>',
}) =>
  zipSync({
    'xl/workbook.xml': strToU8(
      `<workbook ${NS} xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>${sheets}</sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="x/worksheet" Target="worksheets/s.xml"/><Relationship Id="r2" Type="x/worksheet" Target="worksheets/t.xml"/></Relationships>',
    ),
    'xl/worksheets/s.xml': strToU8(sheet),
    ...more,
  });
const codesOf = (file: Uint8Array) => read({ 'job.yaml': job('list.xlsx'), 'list.xlsx': file }).notices.map(({ code }) => code);

test('two sheets that would both do are asked', () => {
  const list = `<worksheet ${NS}><sheetData><row>${['joint', 'rule', 'grade', 'bolts'].map((one) => `<c t="inlineStr"><is><t>${one}</t></is></c>`).join('')}</row></sheetData></worksheet>`;
  const both = book({
    sheet: list,
    sheets: '<sheet name="Rev A" sheetId="1" r:id="r1"/><sheet name="Rev B" sheetId="2" r:id="r2"/>',
    more: { 'xl/worksheets/t.xml': strToU8(list) },
  });
  const { notices } = read({ 'job.yaml': job('list.xlsx'), 'list.xlsx': both });
  expect(notices).toMatchObject([{ code: 'sheet-unclear', params: { sheets: 'Rev A, Rev B', example: 'list.xlsx#Rev A' } }]);
});

test('document types, and with them entities that grow, are refused', () => {
  const entities = `<!DOCTYPE a [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><worksheet ${NS}>&b;</worksheet>`;
  expect(codesOf(book({ sheet: entities }))).toEqual(['workbook-unsafe']);
  expect(codesOf(book({ sheet: `<worksheet ${NS}>&b;</worksheet>` }))).toEqual(['workbook-broken']);
});

test('a part that would grow a thousand times is refused before it is unpacked, and one that lies about its size while it flows', () => {
  const bomb = book({ more: { 'xl/worksheets/s.xml': new Uint8Array(60_000_000).fill(32) } });
  const began = performance.now();
  expect(codesOf(bomb)).toEqual(['workbook-unsafe']);
  expect(performance.now() - began).toBeLessThan(1000);
  const lying = book({ more: { 'xl/worksheets/s.xml': new Uint8Array(60_000_000).fill(32) } });
  const view = new DataView(lying.buffer);
  // the sizes in the directory, set to a thousandth
  for (let at = 0; at < lying.length - 46; at += 1)
    if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 24, true) === 60_000_000) view.setUint32(at + 24, 60_000, true);
  expect(codesOf(lying)).toEqual(['workbook-unsafe']);
});

test.each([
  ['cut short', (bytes: Uint8Array) => bytes.subarray(0, bytes.length - 30)],
  ['without a sheet', () => book({ sheets: '' })],
  ['with a part that is no XML', () => book({ sheet: 'joint;grade' })],
  ['a ZIP of something else', () => zipSync({ 'a.txt': strToU8('a') })],
])('a workbook %s is said to be broken', (_, make) => {
  expect(codesOf(make(DE))).toEqual(['workbook-broken']);
});
