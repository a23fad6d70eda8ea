import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { brief, read, SOUND } from '../../../../test/memory-folder.ts';

const TOOL = `tools:
  - { serial: W-1, name: wrench, kind: click wrench, repeatability: 2 % }
certificates: certificates.csv
`;
const HEAD = 'Werkzeug;Zertifikat;kalibriert am;gültig bis;Messunsicherheit [%];Datei';
const of = (...rows: string[]) => ({ 'tools.yaml': TOOL, 'certificates.csv': `Kalibrierscheine\n\n${HEAD}\n${rows.join('\n')}\n` });
const OLD = 'W-1;C-1;2025-06-01;2026-05-31;0,5;charts/W-1.csv';
const NOW = 'W-1;C-2;1.6.2026;31.5.2027;0,5;charts/W-1.csv';
const NEXT = 'W-1;C-3;2026-12-01;2027-11-30;0,5;charts/W-1.csv';

test('the last certificate that is valid on the day is chosen, the others are kept', () => {
  const { job, notices } = read(of(OLD, NEXT, NOW));
  expect(notices).toEqual([]);
  const [tool] = job!.tools;
  expect(tool!.chart.certificate).toEqual({
    serial: 'W-1',
    number: 'C-2',
    calibrated: '2026-06-01',
    due: '2027-05-31',
    uncertainty: 0.005,
  });
  expect(tool!.certificates!.map(({ number }) => number)).toEqual(['C-1', 'C-3', 'C-2']);
  expect(tool!.chart.settings.length).toBeGreaterThan(1000);
});

test('where none is valid the last one stays, so that the plan says what is wrong', () => {
  const { job } = read(of(OLD));
  expect(job!.tools[0]!.chart.certificate.number).toBe('C-1');
});

test('two of one day are not chosen between; a faulty row, a certificate of no tool and a tool without one are said', () => {
  expect(read(of(NOW, NOW.replace('C-2', 'C-9'))).notices.map(({ code }) => code)).toEqual(['certificates-unclear']);
  expect(read(of(NOW, NEXT.replace('2026-12-01', 'soon'))).notices.map(brief)).toEqual([
    'date-unreadable @ certificates.csv, 5, kalibriert am',
  ]);
  expect(read(of(NOW, NOW.replace('W-1', 'W-8'))).notices.map(({ code }) => code)).toEqual(['certificate-of-no-tool']);
  expect(read(of()).notices.map(({ code }) => code)).toEqual(['certificate-missing']);
});

test('the picture of a certificate is known by its hash; one that is not there is a fault at its line', () => {
  const photo = `${HEAD};Foto`;
  const of = (row: string) => ({ 'tools.yaml': TOOL, 'certificates.csv': `${photo}\n${row};C-2.jpg\n` });
  expect(read(of(NOW)).notices.map(brief)).toEqual(['file-missing @ certificates.csv, 2, Foto']);
  const { job, notices } = read({ ...of(NOW), 'C-2.jpg': 'abc' });
  expect(notices).toEqual([]);
  // SHA-256 of “abc”: FIPS 180-2, appendix B.1
  expect(job!.tools[0]!.chart.certificate.photo).toEqual({
    file: 'C-2.jpg',
    hash: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  });
});

test('a picture named in tools.yaml is looked for, too', () => {
  const tools = String(SOUND['tools.yaml']).replace('uncertainty: 0.5 %', 'uncertainty: 0.5 %, photo: c-1.pdf');
  expect(read({ 'tools.yaml': tools }).notices.map(({ code, place }) => [code, place?.row, place?.path])).toEqual([
    ['file-missing', 7, 'tools → 0 → certificate → photo'],
  ]);
  expect(read({ 'tools.yaml': tools, 'c-1.pdf': 'abc' }).notices).toEqual([]);
});

test('certificates out of a sheet of a workbook, dates and shares as the spreadsheet holds them', () => {
  const list = new Uint8Array(readFileSync(new URL('../../fixtures/workbooks/list-en.xlsx', import.meta.url)));
  const { job, notices } = read({
    'tools.yaml': TOOL.replace('certificates.csv', 'list-en.xlsx'),
    'list-en.xlsx': list,
    'joints.csv': SOUND['joints.csv']!,
  });
  expect(notices).toEqual([]);
  expect(job!.tools[0]!.chart).toMatchObject({
    certificate: { number: 'C-2', calibrated: '2026-06-01', due: '2027-05-31', uncertainty: 0.005 },
    settings: { length: 6 },
  });
});
