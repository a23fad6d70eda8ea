import { type Joint, levelOf, type Notice } from '@clampwright/core';
import { recogniseColumns } from './columns.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { joinRows } from './join-rows.ts';
import { type JointRow, readJointRow } from './joint-row.ts';
import { RowReader } from './row-reader.ts';
import { openTable } from './table.ts';
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
  const table = openTable(bytes, file, { table: 'joints', required, memory });
  if (!table.ok) return { joints: [], notices: table.notices };
  const { head, each } = table.value;
  const columns = recogniseColumns(head, 'joints', required, memory);
  const tagColumn = columns.at.get('tag')?.index;
  const unusable = tagColumn === undefined || columns.notices.some(({ code }) => levelOf(code) === 'fault');
  const byTag = new Map<string, JointRow[]>();
  const faulty = new Set<string | undefined>();
  const ofRows: Notice[] = [];
  const rest = each((row) => {
    if (unusable) return;
    const reader = new RowReader<JointColumn>(head, columns, JOINT_FIELDS, units, row);
    const read = readJointRow(reader);
    ofRows.push(...reader.notices);
    if (!read) {
      faulty.add(row.cells[tagColumn]?.trim());
      return;
    }
    const known = byTag.get(read.tag);
    if (known) known.push(read);
    else byTag.set(read.tag, [read]);
  });
  if (!rest.ok) return { joints: [], notices: rest.notices };
  const notices: Notice[] = [...rest.value.notices, ...columns.notices, ...ofRows];
  if (unusable) return { joints: [], notices };
  for (const { cells } of rest.value.lost) faulty.add(cells[tagColumn]?.trim());
  const joints: Joint[] = [];
  for (const [tag, rows] of byTag) {
    // what was read of a joint is not needed any more when it is one
    byTag.delete(tag);
    if (faulty.has(tag)) continue;
    const { joint, notices: found } = joinRows(tag, rows, defaultRule);
    notices.push(...found);
    if (joint) joints.push(joint);
  }
  return { joints, notices };
}
