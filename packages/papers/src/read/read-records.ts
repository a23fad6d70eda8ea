import { type CivilDate, civilDate, levelOf, type NewtonMillimetre, type Notice, notice, type Radian } from '@clampwright/core';
import { recogniseColumns } from './columns.ts';
import { type HeadingMeans, headingMemory } from './heading-memory.ts';
import { load, type OpenFile } from './open-file.ts';
import { LARGEST_JOINT, readPositions } from './positions.ts';
import { RowReader } from './row-reader.ts';
import { readTable } from './table.ts';
import { RECORD_FIELDS } from './tables/records.ts';

/** How a step of tightening may end, with other words for it. */
const ENDS = {
  'firm contact': ['handfest', 'voller kontakt'],
  stall: ['ok', 'i.o.', 'io', 'stalled', 'stopped', 'torque reached', 'abgeschaltet', 'stillstand', 'drehmoment erreicht'],
  'mark at angle': ['angle reached', 'winkel erreicht', 'markierung'],
  'spline off': ['spline sheared', 'abgeschert'],
  'outer socket stops': [],
  'indicator starts to flatten': [],
  'feeler refused': [],
  'no nut moves': ['keine mutter dreht'],
} as const;
type RecordedEnd = keyof typeof ENDS;

/** What is told of bolts in one row of a filled card or of a tool's records. */
export interface TighteningRecord {
  readonly tag: string;
  readonly bolts: readonly number[];
  readonly step: string;
  readonly end: RecordedEnd;
  readonly done: CivilDate;
  readonly card?: string;
  readonly tool?: string;
  readonly setting?: string;
  readonly torque?: NewtonMillimetre;
  readonly angle?: Radian;
  readonly row: number;
}

/** What the job knows of a joint: rows are held against it. */
export interface KnownJoint {
  readonly bolts: number;
  readonly steps: readonly string[];
}

export interface RecordOptions {
  /** what holds for rows that do not say it themselves */
  readonly step?: string;
  readonly end?: string;
  readonly done?: string;
  readonly card?: string;
  readonly means?: readonly HeadingMeans[];
}

interface ReadRecords {
  readonly records: readonly TighteningRecord[];
  readonly notices: readonly Notice[];
  /** text of the mapping file, where `means` told something new: it belongs beside the file */
  readonly mapping?: string;
}

/** Reads tightening records, a filled card or what a tool kept, CSV or XLSX, against the joints of the job. Every fault of every row at once. */
export function readRecords(
  open: OpenFile,
  file: string,
  joints: ReadonlyMap<string, KnownJoint>,
  options: RecordOptions = {},
): ReadRecords {
  const memory = headingMemory(open, options.means);
  const required = [
    'joint' as const,
    'bolt' as const,
    ...(options.step === undefined ? ['step' as const] : []),
    ...(options.end === undefined ? ['end' as const] : []),
    ...(options.done === undefined ? ['done' as const] : []),
  ];
  const bytes = load(open, file);
  const table = bytes.ok ? readTable(bytes.value, file, { table: 'records', required, memory }) : bytes;
  if (!table.ok) return { records: [], notices: table.notices };
  const columns = recogniseColumns(table.value, 'records', required, memory);
  const notices: Notice[] = [...table.value.notices, ...columns.notices, ...memory.notices()];
  if (columns.notices.some(({ code }) => levelOf(code) === 'fault')) return { records: [], notices };
  const records: TighteningRecord[] = [];
  for (const row of table.value.rows) {
    const reader = new RowReader<keyof typeof RECORD_FIELDS>(table.value, columns, RECORD_FIELDS, 'metric', row);
    const tag = reader.required('joint');
    const joint = tag === undefined ? undefined : joints.get(tag);
    if (tag !== undefined && !joint)
      reader.fault(
        notice('record-joint-unknown', { tag, joints: [...joints.keys()].slice(0, 12).join(', ') || '–' }, reader.at('joint', tag)),
      );
    const bolts = boltsOf(reader, joint);
    const step = reader.text('step') ?? options.step ?? reader.required('step');
    if (step !== undefined && joint && !joint.steps.includes(step))
      reader.fault(notice('record-step-unknown', { step, steps: joint.steps.join(', ') }, reader.at('step', step)));
    const end = endOf(reader, options.end);
    const done = dateOf(reader, options.done);
    const optional = {
      card: reader.label('card') ?? options.card,
      tool: reader.label('tool'),
      setting: reader.label('setting'),
      torque: reader.quantity('torque', 'torque'),
      angle: reader.quantity('angle', 'angle'),
    };
    notices.push(...reader.notices);
    if (reader.notices.length > 0 || tag === undefined || !bolts || step === undefined || end === undefined || done === undefined) continue;
    const said = Object.fromEntries(Object.entries(optional).filter(([, value]) => value !== undefined));
    records.push({ tag, bolts, step, end, done, row: row.row, ...said });
  }
  const mapping = memory.text();
  return { records, notices, ...(mapping === undefined ? {} : { mapping }) };
}

type Reader = RowReader<keyof typeof RECORD_FIELDS>;

/** `7` is one bolt here, `1-12` are twelve. */
function boltsOf(reader: Reader, joint: KnownJoint | undefined): readonly number[] | undefined {
  const text = reader.required('bolt');
  if (text === undefined) return undefined;
  const bolts = /^\d{1,6}$/.test(text) ? [Number(text)] : readPositions(text);
  if (!bolts || bolts.length === 0 || bolts.some((bolt) => bolt < 1 || bolt > LARGEST_JOINT)) {
    reader.fault(notice('positions-unreadable', {}, reader.at('bolt', text)));
    return undefined;
  }
  const beyond = joint && bolts.find((bolt) => bolt > joint.bolts);
  if (joint && beyond !== undefined)
    reader.fault(notice('record-bolt-unknown', { bolt: beyond, bolts: joint.bolts }, reader.at('bolt', text)));
  return bolts;
}

function endOf(reader: Reader, fallback: string | undefined): RecordedEnd | undefined {
  if (reader.has('end')) return reader.word('end', ENDS);
  if (fallback === undefined) {
    reader.required('end');
    return undefined;
  }
  const wanted = fallback.toLowerCase();
  const found = (Object.keys(ENDS) as RecordedEnd[]).find((end) => end === wanted || (ENDS[end] as readonly string[]).includes(wanted));
  if (!found) reader.fault(notice('word-unknown', { wanted: Object.keys(ENDS).join(', ') }, reader.at('end', fallback)));
  return found;
}

/** A date, or a date and a time, of which the day is kept. */
function dateOf(reader: Reader, fallback: string | undefined): CivilDate | undefined {
  const text = reader.text('done') ?? fallback ?? reader.required('done');
  if (text === undefined) return undefined;
  const day = /^(\d{4}-\d\d-\d\d)(?:[ T].*)?$/.exec(text)?.[1];
  const german = /^(\d{1,2})\.(\d{1,2})\.(\d{4})(?:\s.*)?$/.exec(text);
  const date = civilDate(day ?? (german ? `${german[3]}-${german[2]!.padStart(2, '0')}-${german[1]!.padStart(2, '0')}` : ''));
  if (!date) reader.fault(notice('date-unreadable', {}, reader.at('done', text)));
  return date;
}
