import { CHARGE_CONFIDENCE, levelOf, type Notice, nextChargeBound, notice } from '@clampwright/core';
import { recogniseColumns } from './columns.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { type JudgedTest, judgedSuitability } from './judged-test.ts';
import { load, type OpenFile } from './open-file.ts';
import type { Table } from './place.ts';
import { RowReader } from './row-reader.ts';
import { stated } from './stated.ts';
import { readTable } from './table.ts';
import { BATTERY_FIELDS } from './tables/battery-log.ts';
import { SUITABILITY_FIELDS } from './tables/suitability.ts';

interface Series {
  readonly judged: JudgedTest[];
  readonly notices: Notice[];
}

const SUITABILITY = ['lot', 'size', 'grade', 'system', 'preload', 'clamp', 'torque'] as const;
const CHARGES = ['serial', 'bolts'] as const;

/** Measured series of a CSV or XLSX file: suitability tests, a row an assembly; or a battery log, a row a charge. Told apart by their headings. */
export function readSeries(open: OpenFile, file: string, memory: HeadingMemory): Series {
  const bytes = load(open, file);
  if (!bytes.ok) return { judged: [], notices: [...bytes.notices] };
  const suitability = readTable(bytes.value, file, { table: 'suitability', required: SUITABILITY, memory });
  const charges = readTable(bytes.value, file, { table: 'batteries', required: CHARGES, memory });
  const fits = (table: typeof charges) =>
    table.ok ? recogniseColumns(table.value, 'batteries', CHARGES, memory).notices.every(({ code }) => levelOf(code) !== 'fault') : false;
  if (charges.ok && fits(charges)) return chargesOf(charges.value, memory);
  return suitability.ok ? suitabilityOf(suitability.value, memory) : { judged: [], notices: [...suitability.notices] };
}

function suitabilityOf(table: Table, memory: HeadingMemory): Series {
  const columns = recogniseColumns(table, 'suitability', SUITABILITY, memory);
  const notices: Notice[] = [...table.notices, ...columns.notices];
  if (columns.notices.some(({ code }) => levelOf(code) === 'fault')) return { judged: [], notices };
  const tests = new Map<string, Parameters<typeof judgedSuitability>[0]>();
  const faulty = new Set<string>();
  for (const row of table.rows) {
    const reader = new RowReader<keyof typeof SUITABILITY_FIELDS>(table, columns, SUITABILITY_FIELDS, 'metric', row);
    const [lot, size, grade] = [reader.requiredLabel('lot'), reader.required('size'), reader.required('grade')];
    const system = reader.has('system') ? reader.word('system', { HR: [], HV: [] }) : void reader.required('system');
    const [preload, clamp, torque] = [
      reader.quantity('preload', 'force'),
      reader.quantity('clamp', 'length'),
      reader.quantity('torque', 'torque'),
    ];
    for (const key of ['preload', 'clamp', 'torque'] as const) if (!reader.has(key)) reader.required(key);
    const assembly = stated({
      torque,
      'greatest-force': reader.quantity('greatestForce', 'force'),
      'first-rotation': reader.quantity('firstRotation', 'angle'),
      'second-rotation': reader.quantity('secondRotation', 'angle'),
    });
    notices.push(...reader.notices);
    if (lot === undefined) continue;
    if (
      reader.notices.length > 0 ||
      size === undefined ||
      grade === undefined ||
      system === undefined ||
      preload === undefined ||
      clamp === undefined
    ) {
      faulty.add(lot);
      continue;
    }
    const known = tests.get(lot);
    const head = { lot, size, grade, system, preload, 'clamped-thickness': clamp };
    const differs = known && (Object.keys(head) as (keyof typeof head)[]).find((key) => known[key] !== head[key]);
    if (differs) {
      notices.push(
        notice(
          'joint-contradicts-itself',
          { tag: lot, field: differs, first: String(known[differs]), second: String(head[differs]) },
          reader.place,
        ),
      );
      faulty.add(lot);
    }
    tests.set(lot, { ...head, assemblies: [...(known?.assemblies ?? []), assembly as never] });
  }
  const judged: JudgedTest[] = [];
  for (const [lot, test] of tests) {
    // a series without one of its rows would be another series
    if (faulty.has(lot)) continue;
    const found = judgedSuitability(test);
    if (found.ok) judged.push(found.value);
    else notices.push(...found.notices.map((one) => ({ ...one, place: { file: table.file } })));
  }
  return { judged, notices };
}

function chargesOf(table: Table, memory: HeadingMemory): Series {
  const columns = recogniseColumns(table, 'batteries', CHARGES, memory);
  const notices: Notice[] = [...table.notices, ...columns.notices];
  const counts = new Map<string, number[]>();
  for (const row of table.rows) {
    const reader = new RowReader<keyof typeof BATTERY_FIELDS>(table, columns, BATTERY_FIELDS, 'metric', row);
    const serial = reader.requiredLabel('serial');
    const text = reader.required('bolts');
    const bolts = text === undefined || !/^\d{1,6}$/.test(text) ? undefined : Number(text);
    if (text !== undefined && bolts === undefined)
      reader.fault(notice('number-wanted', { wanted: 'a whole number of bolts' }, reader.at('bolts', text)));
    notices.push(...reader.notices);
    if (serial !== undefined && bolts !== undefined) counts.set(serial, [...(counts.get(serial) ?? []), bolts]);
  }
  const judged: JudgedTest[] = [];
  for (const [serial, all] of counts) {
    const bound = nextChargeBound(all, CHARGE_CONFIDENCE);
    if (bound.ok)
      judged.push({
        kind: 'charges',
        of: serial,
        verdict: { charges: all.length, least: Math.floor(bound.value), confidence: CHARGE_CONFIDENCE, notices: [] },
      });
    else notices.push(...bound.notices.map((one) => ({ ...one, place: { file: table.file, path: serial } })));
  }
  return { judged, notices };
}
