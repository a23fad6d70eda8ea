import type { Field } from '../field.ts';
import { BATTERY_FIELDS } from './battery-log.ts';
import { CERTIFICATE_FIELDS } from './certificates.ts';
import { CHART_FIELDS } from './chart.ts';
import { JOINT_FIELDS } from './joint-list.ts';
import { RECORD_FIELDS } from './records.ts';
import { SUITABILITY_FIELDS } from './suitability.ts';

/** Every table that can be read, CSV or XLSX: what its columns may mean, a file each and its line here. */
export const TABLES = {
  joints: { says: 'joint list', fields: JOINT_FIELDS },
  chart: { says: 'setting chart', fields: CHART_FIELDS },
  certificates: { says: 'list of certificates', fields: CERTIFICATE_FIELDS },
  suitability: { says: 'suitability test', fields: SUITABILITY_FIELDS },
  batteries: { says: 'battery log', fields: BATTERY_FIELDS },
  records: { says: 'tightening records', fields: RECORD_FIELDS },
} as const satisfies Readonly<Record<string, { readonly says: string; readonly fields: Readonly<Record<string, Field>> }>>;

export type TableName = keyof typeof TABLES;
export type FieldOf<T extends TableName> = keyof (typeof TABLES)[T]['fields'] & string;
export const fieldsOf = (table: TableName): Readonly<Record<string, Field>> => TABLES[table].fields;
