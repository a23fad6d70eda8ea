import { expect, test } from 'vitest';
import { brief, bytesOf } from '../../../../test/memory-folder.ts';
import { readTests } from './read-tests.ts';

const judged = (files: Readonly<Record<string, string>>, file: string) =>
  readTests((path) => (files[path] === undefined ? 'missing' : bytesOf(files[path])), file);
const YAML = `suitability:
  - lot: L7
    size: M20
    grade: "10.9"
    system: HV
    preload: 172 kN
    clamped-thickness: 60 mm
    assemblies:
${[450, 455, 460, 452, 458].map((torque) => `      - { torque: ${torque} N·m, greatest-force: 220 kN, first-rotation: 150°, second-rotation: 300° }`).join('\n')}
`;
const CSV = `Eignungsprüfung Los 7;;;;;;;;;
Los;Größe;Güte;Garnitur;Vorspannkraft [kN];Klemmlänge [mm];Drehmoment [N·m];Höchstkraft [kN];Drehwinkel 1 [°];Drehwinkel 2 [°]
${[450, 455, 460, 452, 458].map((torque) => `L7;M20;10.9;HV;172;60;${torque},0;220;150;300`).join('\n')}
`;

test('a suitability test says the same as a table and as YAML', () => {
  const table = judged({ 'l7.csv': CSV }, 'l7.csv');
  expect(table.notices).toEqual([]);
  expect(table.judged).toEqual(judged({ 'l7.yaml': YAML }, 'l7.yaml').judged);
  expect(table.judged[0]).toMatchObject({ kind: 'suitability', of: 'L7' });
});

test('a series with a faulty row is not judged: it would be another series', () => {
  const { judged: found, notices } = judged({ 'l7.csv': CSV.replace('455,0', 'n/a') }, 'l7.csv');
  expect(found).toEqual([]);
  expect(notices.map(brief)).toEqual(['quantity-wanted @ l7.csv, 4, Drehmoment [N·m]']);
});

test('a battery log says what the next charge does at least: the bound of Hahn & Meeker 4.7, as in core', () => {
  const log = `battery,date,bolts on one charge\n${[142, 138, 150, 145, 133].map((bolts, day) => `B-1,2026-11-0${day + 1},${bolts}`).join('\n')}\nB-2,2026-11-01,90\n`;
  const { judged: found, notices } = judged({ 'log.csv': log }, 'log.csv');
  expect(found).toMatchObject([{ kind: 'charges', of: 'B-1', verdict: { charges: 5, least: 126 } }]);
  expect(notices.map(({ code }) => code)).toEqual(['log-too-short']);
});
