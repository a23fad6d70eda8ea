import { type Notice, notice } from '@clampwright/core';
import type { HeadingMemory } from './heading-memory.ts';
import { headingLine, lexiconOf, plainHeading } from './headings/index.ts';
import { placeOfRow, type Table } from './place.ts';
import { isUnit, unitsOf } from './quantity.ts';
import { columnLetter } from './row.ts';
import { type FieldOf, fieldsOf, type TableName } from './tables/index.ts';

/** Where each meaning stands in a table, and in which unit its heading says it is. */
export interface Columns<K extends string> {
  readonly at: ReadonlyMap<K, { readonly index: number; readonly heading: string; readonly unit?: string }>;
  readonly notices: readonly Notice[];
}

/** A row of headings and where it stands. */
export type HeadingRow = Pick<Table, 'file' | 'sheet' | 'headingRow' | 'headings'>;

/** Heading and unit of a heading cell: `Clamp length [mm]`, `Torque (N·m)`, `Preload / kN`, `Length, in`. */
function splitHeading(heading: string): { readonly name: string; readonly unit?: string } {
  const parts = /^(.*?)\s*(?:\[([^\]]*)\]|\(([^)]*)\)|[/,]\s*([^\s/,]{1,6}))\s*$/.exec(heading);
  const unit = parts?.[2] ?? parts?.[3] ?? parts?.[4];
  return parts && unit !== undefined && parts[1] !== '' ? { name: parts[1]!, unit: unit.trim() } : { name: heading };
}

interface Understood<K> {
  readonly fields: readonly K[];
  readonly unit?: string;
  /** a person said so */
  readonly told?: boolean;
}

/** What one heading means: one field, several that it may be, or none. Nothing longer than a cell's few words is a heading. */
function understand<T extends TableName>(table: T, heading: string, told: ReturnType<HeadingMemory['recall']>): Understood<FieldOf<T>> {
  const { sure, unclear } = lexiconOf(table);
  const line = headingLine(heading);
  const said = told.get(plainHeading(line));
  const split = splitHeading(line);
  if (said) {
    const unit = said.unit ?? split.unit;
    return { fields: said.field === undefined ? [] : [said.field as FieldOf<T>], told: true, ...(unit === undefined ? {} : { unit }) };
  }
  const find = (name: string): readonly string[] => {
    const one = sure.get(plainHeading(name));
    return one === undefined ? (unclear.get(plainHeading(name)) ?? []) : [one];
  };
  const whole = find(line) as FieldOf<T>[];
  if (whole.length > 0) return { fields: whole };
  const fields = find(split.name) as FieldOf<T>[];
  return split.unit === undefined ? { fields } : { fields, unit: split.unit };
}

/** What a heading means by itself, without what a person said of the table it stands in. */
export const meansOf = <T extends TableName>(table: T, heading: string): readonly FieldOf<T>[] =>
  understand(table, heading, NOTHING_TOLD).fields;
const NOTHING_TOLD: ReturnType<HeadingMemory['recall']> = new Map();

/** How much of a row of cells is headings of a table: to tell the heading row from a title above it, and one sheet from another. */
export function headingFit(
  table: TableName,
  required: readonly string[],
  cells: readonly string[],
  memory: HeadingMemory,
): { readonly found: number; readonly complete: boolean } {
  const told = memory.recall(table, cells);
  const headings = cells
    .filter((cell) => cell !== '' && cell.length <= LONGEST_HEADING)
    .map((cell) => understand(table, cell, told).fields);
  const found = new Set(headings.flat());
  return { found: headings.filter((fields) => fields.length > 0).length, complete: required.every((field) => found.has(field as never)) };
}
const LONGEST_HEADING = 80;

/**
 * Recognises columns by meaning, whatever their order. What may mean several things is asked; what is not understood is said; two of
 * one meaning are refused.
 */
export function recogniseColumns<T extends TableName>(
  row: HeadingRow,
  table: T,
  required: readonly FieldOf<T>[],
  memory: HeadingMemory,
): Columns<FieldOf<T>> {
  const fields = fieldsOf(table);
  const says = (field: string) => fields[field]!.says;
  const told = memory.recall(table, row.headings);
  const settled = new Set([...told.values()].map(({ field }) => field));
  const at = new Map<FieldOf<T>, { index: number; heading: string; unit?: string }>();
  const notices: Notice[] = [];
  const unknown: string[] = [];
  const top = placeOfRow(row, row.headingRow);
  for (const [index, given] of row.headings.entries()) {
    const heading = headingLine(given);
    if (heading === '') continue;
    const place = { ...top, column: heading, letter: columnLetter(index) };
    const means = understand(table, heading, told);
    // where a person said which column it is, no other is taken for it
    const open = means.told ? means.fields : means.fields.filter((field) => !settled.has(field));
    const [field] = open;
    if (field === undefined) {
      if (means.told || means.fields.length > 0) continue;
      unknown.push(heading);
      notices.push(notice('column-ignored', { heading }, place));
    } else if (means.fields.length > 1) {
      notices.push(notice('column-unclear', { heading, candidates: open.map(says).join(', '), example: says(field) }, place));
    } else if (at.has(field)) {
      notices.push(notice('column-twice', { heading, meaning: says(field), other: at.get(field)!.heading }, place));
    } else {
      const { dimension } = fields[field]!;
      if (means.unit !== undefined && dimension !== undefined && !isUnit(dimension, means.unit))
        notices.push(notice('unit-unknown', { unit: means.unit, wanted: unitsOf(dimension) }, place));
      at.set(field, { index, heading, ...(means.unit === undefined ? {} : { unit: means.unit }) });
    }
  }
  const asked = notices.some(({ code }) => code === 'column-unclear');
  if (at.size === 0 && !asked) return { at, notices: [notice('heading-row-missing', { wanted: required.map(says).join(', ') }, top)] };
  const candidates = unknown.slice(0, 8).map((one) => `“${one}”`);
  for (const field of required) {
    if (at.has(field)) continue;
    const wanted = says(field);
    if (asked || unknown.length === 0) notices.push(notice('column-missing', { wanted }, top));
    else notices.push(notice('column-asked', { wanted, candidates: candidates.join(', '), example: unknown[0]! }, top));
  }
  return { at, notices };
}
