import { type Notice, notice } from '@clampwright/core';
import type { ColumnMeaning } from './joint-columns.ts';
import { isUnit, unitsOf } from './quantity.ts';
import type { Table } from './table.ts';

/** Where each meaning stands in a table, and in which unit its heading says it is. */
export interface Columns<K extends string> {
  readonly at: ReadonlyMap<K, { readonly index: number; readonly heading: string; readonly unit?: string }>;
  readonly notices: readonly Notice[];
}

/** Heading and unit of a heading cell: `Clamp length [mm]`, `Torque (N·m)`, `Preload / kN`, `Length, in`. */
function splitHeading(heading: string): { readonly name: string; readonly unit?: string } {
  const parts = /^(.*?)\s*(?:\[([^\]]*)\]|\(([^)]*)\)|[/,]\s*([^\s/,]{1,6}))\s*$/.exec(heading);
  const unit = parts?.[2] ?? parts?.[3] ?? parts?.[4];
  return parts && unit !== undefined && parts[1] !== '' ? { name: parts[1]!, unit: unit.trim() } : { name: heading };
}

const plain = (heading: string) =>
  heading
    .normalize('NFC')
    .toLowerCase()
    .replace(/[._:]/g, ' ')
    .replace(/(?<=\p{L})-(?=\p{L})/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** Recognises columns by meaning, whatever their order. What is not understood is said, not guessed; two of one meaning are refused. */
export function recogniseColumns<K extends string>(
  table: Table,
  meanings: Readonly<Record<K, ColumnMeaning>>,
  required: readonly K[],
): Columns<K> {
  const byHeading = new Map<string, K>();
  for (const key of Object.keys(meanings) as K[]) for (const heading of meanings[key].headings) byHeading.set(plain(heading), key);
  const at = new Map<K, { index: number; heading: string; unit?: string }>();
  const notices: Notice[] = [];
  for (const [index, heading] of table.headings.entries()) {
    if (heading.trim() === '') continue;
    const place = { file: table.file, row: 1, column: heading };
    const whole = byHeading.get(plain(heading));
    const split = whole === undefined ? splitHeading(heading) : { name: heading };
    const key = whole ?? byHeading.get(plain(split.name));
    if (key === undefined) {
      notices.push(notice('column-ignored', { heading }, place));
      continue;
    }
    if (at.has(key)) {
      notices.push(notice('column-twice', { heading, meaning: meanings[key].says }, place));
      continue;
    }
    const { dimension } = meanings[key];
    if (split.unit !== undefined && dimension !== undefined && !isUnit(dimension, split.unit)) {
      notices.push(notice('unit-unknown', { unit: split.unit, wanted: unitsOf(dimension) }, place));
    }
    at.set(key, split.unit === undefined ? { index, heading } : { index, heading, unit: split.unit });
  }
  if (at.size === 0) {
    const wanted = required.map((key) => meanings[key].says).join(', ');
    return { at, notices: [notice('heading-row-missing', { wanted }, { file: table.file, row: 1 })] };
  }
  for (const key of required) {
    if (!at.has(key)) notices.push(notice('column-missing', { wanted: meanings[key].says }, { file: table.file, row: 1 }));
  }
  return { at, notices };
}
