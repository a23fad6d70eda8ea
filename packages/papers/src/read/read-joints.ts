import { type Joint, levelOf, type Notice } from '@clampwright/core';
import { recogniseColumns } from './columns.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { joinRows } from './join-rows.ts';
import { type JointRow, readJointRow } from './joint-row.ts';
import { RowReader } from './row-reader.ts';
import { readTable } from './table.ts';
import { JOINT_FIELDS, type JointColumn } from './tables/joint-list.ts';

export interface JointList {
  readonly joints: readonly Joint[];
  readonly notices: readonly Notice[];
}

const REQUIRED: readonly JointColumn[] = ['tag', 'grade'];

/**
 * Joints from a CSV or XLSX file. Rows of one tag are the subgroups of one joint, or its bolts. A row with a fault gives no joint, and
 * says why; a joint with one faulty row is left out whole; all the others are kept.
 */
export function readJoints(
  bytes: Uint8Array,
  file: string,
  units: 'metric' | 'US',
  memory: HeadingMemory,
  defaultRule?: string,
): JointList {
  const required = defaultRule === undefined ? [...REQUIRED, 'rule' as const] : REQUIRED;
  const table = readTable(bytes, file, { table: 'joints', required, memory });
  if (!table.ok) return { joints: [], notices: table.notices };
  const columns = recogniseColumns(table.value, 'joints', required, memory);
  const notices: Notice[] = [...table.value.notices, ...columns.notices];
  const tagColumn = columns.at.get('tag')?.index;
  if (tagColumn === undefined || columns.notices.some(({ code }) => levelOf(code) === 'fault')) return { joints: [], notices };
  const byTag = new Map<string, JointRow[]>();
  const faulty = new Set(table.value.lost.map(({ cells }) => cells[tagColumn]?.trim()));
  for (const row of table.value.rows) {
    const reader = new RowReader<JointColumn>(table.value, columns, JOINT_FIELDS, units, row);
    const read = readJointRow(reader);
    notices.push(...reader.notices);
    if (!read) {
      faulty.add(row.cells[tagColumn]?.trim());
      continue;
    }
    const known = byTag.get(read.tag);
    if (known) known.push(read);
    else byTag.set(read.tag, [read]);
  }
  const joints: Joint[] = [];
  for (const [tag, rows] of byTag) {
    if (faulty.has(tag)) continue;
    const { joint, notices: found } = joinRows(tag, rows, defaultRule);
    notices.push(...found);
    if (joint) joints.push(joint);
  }
  return { joints, notices };
}
