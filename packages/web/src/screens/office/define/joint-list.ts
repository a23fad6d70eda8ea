import { RULE_SETS } from '@clampwright/core';
import { JOINT_FIELDS, type JointColumn, yamlOf } from '@clampwright/papers/edit';
import type { Files } from '../../../draft/draft.ts';
import type { ListHead } from '../../../planning/view.ts';

const UNIT = {
  metric: { length: 'mm', force: 'kN', torque: 'N·m', stress: 'MPa' },
  US: { length: 'in', force: 'kip', torque: 'lbf·ft', stress: 'ksi' },
} as const;

const jobOf = (files: Files): Readonly<Record<string, unknown>> => {
  const bytes = files.get('job.yaml');
  return ((bytes && yamlOf(bytes)) as Readonly<Record<string, unknown>> | undefined) ?? {};
};

/** The file in which the joints stand. */
export const listFile = (files: Files): string => String(jobOf(files).joints ?? 'joints.csv');

/** The heading of a new column: what it means, and the unit of the job. */
export function headingOf(field: JointColumn, files: Files): string {
  const one: { readonly says: string; readonly dimension?: string } = JOINT_FIELDS[field];
  const unit = UNIT[jobOf(files).units === 'US' ? 'US' : 'metric'][one.dimension as keyof (typeof UNIT)['metric']];
  return unit === undefined ? one.says : `${one.says} [${unit}]`;
}

/** Width of a column by what stands in it, px. */
const WIDTH: Readonly<Partial<Record<JointColumn, number>>> = {
  tag: 110,
  title: 250,
  rule: 165,
  flange: 190,
  boltOne: 190,
  reactionPoint: 180,
  viewedFrom: 120,
  direction: 120,
  tools: 150,
  frictionSource: 190,
  sequence: 180,
};
export const widthOf = (field: string | undefined, heading: string): number =>
  WIDTH[field as JointColumn] ?? Math.max(84, Math.min(170, 9 * heading.length + 16));

const names = (list: unknown, key: string): string[] =>
  Array.isArray(list)
    ? list.flatMap((one) =>
        (one as Readonly<Record<string, unknown>> | null)?.[key] === undefined
          ? []
          : [String((one as Readonly<Record<string, unknown>>)[key])],
      )
    : [];

/** What is usually written into a column. */
export function choicesOf(files: Files): Readonly<Partial<Record<JointColumn, readonly string[]>>> {
  const tools = files.get('tools.yaml');
  return {
    rule: Object.keys(RULE_SETS),
    system: ['HV', 'HR', 'HRC', 'plain'],
    grade: ['8.8', '10.9', 'A193 B7', 'A4-70', 'A4-80', 'A325', 'A490'],
    size: ['M12', 'M16', 'M20', 'M22', 'M24', 'M27', 'M30', 'M36'],
    direction: ['clockwise', 'counter-clockwise'],
    turned: ['nut', 'head'],
    kClass: ['K0', 'K1', 'K2'],
    zone: ['none', '0', '1', '2', '20', '21', '22'],
    lot: names(jobOf(files).lots, 'id'),
    tools: names((tools && (yamlOf(tools) as Readonly<Record<string, unknown>> | undefined))?.tools, 'serial'),
  };
}

/** Place of a field in a list, or −1. */
export const columnOf = (head: ListHead | undefined, field: string): number => head?.columns.findIndex((one) => one.field === field) ?? -1;
