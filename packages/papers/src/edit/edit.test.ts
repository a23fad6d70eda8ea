import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvBytes, csvText, withCells, withoutRecords, withRecords } from './csv-text.ts';
import { changeYaml, yamlOf } from './yaml-text.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const text = (of: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(of);

describe('csvText()', () => {
  test('gives back every byte of what nobody touched', () => {
    const file = '\ufeffjoint;size ; note\r\nA;M20;"say ""so"";\r\ntwice"\r\n\r\nB;M24;';
    expect(text(csvBytes(csvText(bytes(file))!))).toBe(file);
    const [, second] = csvText(bytes(file))!.records;
    expect(second!.cells).toEqual(['A', 'M20', 'say "so";\r\ntwice']);
  });

  test('writes anew only the record that changed', () => {
    const file = csvText(bytes('joint, size\nA ,  M20\nB, M24'))!;
    expect(text(csvBytes(withCells(file, [{ record: 1, column: 1, text: 'M22, odd' }])))).toBe('joint, size\nA,"M22, odd"\nB, M24');
    expect(text(csvBytes(withRecords(file, 3, [['C', 'M16']])))).toBe('joint, size\nA ,  M20\nB, M24\nC,M16\n');
    expect(text(csvBytes(withoutRecords(file, new Set([1]))))).toBe('joint, size\nB, M24');
  });

  test('is read back by another parser as it was meant, whatever is typed', () => {
    const cell = fc.string({ unit: 'grapheme', maxLength: 8 }).map((one) => one.trim());
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 }), (rows) => {
        const file = withRecords(csvText(bytes('a,b,c\n'))!, 1, rows);
        const read = parse(text(csvBytes(file)), { relax_column_count: true }) as string[][];
        expect(read.slice(1)).toEqual(rows.map((row) => [...row]));
        expect(
          csvText(csvBytes(file))!
            .records.slice(1)
            .map(({ cells }) => [...cells]),
        ).toEqual(rows.map((row) => [...row]));
      }),
      { seed: 20261128, numRuns: 300 },
    );
  });
});

describe('changeYaml()', () => {
  const demo = () => new Uint8Array(readFileSync('demo/job.yaml'));

  test('keeps comments and the rest of the file', () => {
    const before = text(demo());
    const after = text(changeYaml(demo(), [{ kind: 'set', path: ['execution-class'], value: 'EXC2' }]));
    expect(after).toBe(before.replace('execution-class: EXC3 #', 'execution-class: EXC2 #'));
  });

  test('adds to a list and takes from it', () => {
    const added = changeYaml(demo(), [{ kind: 'insert', path: ['people'], at: 3, value: { name: 'Ida Fell', role: 'operator' } }]);
    expect(text(added)).toContain('  - { name: Ida Fell, role: operator }\n');
    expect(yamlOf(changeYaml(added, [{ kind: 'remove', path: ['people', 3] }]))).toEqual(yamlOf(demo()));
  });

  test('makes what is not there, and takes away a map that says nothing any more', () => {
    const made = changeYaml(bytes(''), [
      { kind: 'set', path: ['charger', 'watts'], value: '140' },
      { kind: 'insert', path: ['tools'], at: 0, value: { serial: '0012', name: 'wrench' } },
    ]);
    expect(yamlOf(made)).toEqual({ charger: { watts: '140' }, tools: [{ serial: '0012', name: 'wrench' }] });
    expect(yamlOf(changeYaml(made, [{ kind: 'remove', path: ['charger', 'watts'] }]))).not.toHaveProperty('charger');
  });

  test('leaves a file that cannot be read as it is', () => {
    const broken = bytes('a: [1');
    expect(changeYaml(broken, [{ kind: 'set', path: ['b'], value: 1 }])).toBe(broken);
    expect(yamlOf(broken)).toBeUndefined();
  });
});
