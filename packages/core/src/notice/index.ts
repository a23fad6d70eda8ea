/**
 * Notices: everything the product can object to, by stable code. Codes are never reused. The texts live in `words`,
 * one map per file here; a code without a text does not compile.
 */

import { aroundNotices } from './around.ts';
import { assemblyNotices } from './assembly.ts';
import { chartNotices } from './chart.ts';
import { fastenerNotices } from './fastener.ts';
import { flangeNotices } from './flange.ts';
import { inputNotices } from './input.ts';
import { inspectionNotices } from './inspection.ts';
import { interactionNotices } from './interaction.ts';
import { jointNotices } from './joint.ts';
import type { Kind, Level } from './level.ts';
import { modelNotices } from './model.ts';
import { recordNotices } from './record.ts';
import { rotationalCapacityNotices } from './rotational-capacity.ts';
import { ruleNotices } from './rule.ts';
import { serverNotices } from './server.ts';
import { simulationNotices } from './simulation.ts';
import { structuralNotices } from './structural.ts';
import { supplyNoticeGroup } from './supply.ts';
import { toolCheckNotices } from './tool-check.ts';

/** The groups, one file each; `words` holds one file of texts for each. */
export const NOTICE_GROUPS = {
  chart: chartNotices,
  fastener: fastenerNotices,
  flange: flangeNotices,
  input: inputNotices,
  interaction: interactionNotices,
  joint: jointNotices,
  model: modelNotices,
  record: recordNotices,
  rule: ruleNotices,
  simulation: simulationNotices,
  server: serverNotices,
  structural: structuralNotices,
  'rotational-capacity': rotationalCapacityNotices,
  assembly: assemblyNotices,
  inspection: inspectionNotices,
  'tool-check': toolCheckNotices,
  around: aroundNotices,
  supply: supplyNoticeGroup,
} as const;
export const NOTICES = {
  ...chartNotices,
  ...fastenerNotices,
  ...flangeNotices,
  ...inputNotices,
  ...interactionNotices,
  ...jointNotices,
  ...modelNotices,
  ...recordNotices,
  ...ruleNotices,
  ...simulationNotices,
  ...serverNotices,
  ...structuralNotices,
  ...rotationalCapacityNotices,
  ...assemblyNotices,
  ...inspectionNotices,
  ...toolCheckNotices,
  ...aroundNotices,
  ...supplyNoticeGroup,
} as const;

type Registry = typeof NOTICES;
export type NoticeCode = keyof Registry;
export type ParamsOf<K extends NoticeCode> = Registry[K] extends Kind<infer P> ? P : never;

/** Where in the input: a file with row and column as a spreadsheet shows them, or a dotted path in a YAML file. */
export interface Place {
  readonly file?: string;
  /** of a workbook */
  readonly sheet?: string;
  readonly row?: number;
  /** the column's heading, and its letter */
  readonly column?: string;
  readonly letter?: string;
  readonly path?: string;
  /** what was read there, cut to a line */
  readonly read?: string;
}

export type NoticeOf<K extends NoticeCode> = K extends NoticeCode
  ? { readonly code: K; readonly params: ParamsOf<K>; readonly place?: Place }
  : never;
export type Notice = NoticeOf<NoticeCode>;

/**
 * Makes a notice.
 *
 * @example
 * expect(notice('thread-unknown', { designation: 'M23' }).code).toBe('thread-unknown');
 */
export function notice<K extends NoticeCode>(code: K, params: ParamsOf<K>, place?: Place): NoticeOf<K> {
  return (place ? { code, params, place } : { code, params }) as NoticeOf<K>;
}

export const levelOf = (code: NoticeCode): Level => NOTICES[code].level;
