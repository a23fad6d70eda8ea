import { type Certificate, type CivilDate, civilDate, type Notice, notice, type Outcome, type Place } from '@clampwright/core';
import { recogniseColumns } from './columns.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { load, type OpenFile } from './open-file.ts';
import { RowReader } from './row-reader.ts';
import { readTable } from './table.ts';
import { CERTIFICATE_FIELDS } from './tables/certificates.ts';

/** A certificate with the file of its chart, and of its picture. */
export interface CertificateVersion extends Omit<Certificate, 'photo'> {
  readonly chart: string;
  /** where it lies, and where that was said */
  readonly photo?: { readonly file: string; readonly place: Place };
}

const REQUIRED = ['tool', 'number', 'calibrated', 'due', 'uncertainty', 'chart'] as const;
type Column = keyof typeof CERTIFICATE_FIELDS;
const RATES = { hard: ['hart'], soft: ['weich'] } as const;

/** A list of certificates, CSV or XLSX, a row each; a faulty row is left out and said. */
export function readCertificates(open: OpenFile, file: string, memory: HeadingMemory, notices: Notice[]): readonly CertificateVersion[] {
  const bytes = load(open, file);
  const table = bytes.ok ? readTable(bytes.value, file, { table: 'certificates', required: REQUIRED, memory }) : bytes;
  if (!table.ok) {
    notices.push(...table.notices);
    return [];
  }
  const columns = recogniseColumns(table.value, 'certificates', REQUIRED, memory);
  notices.push(...table.value.notices, ...columns.notices);
  if (REQUIRED.some((field) => !columns.at.has(field))) return [];
  return table.value.rows.flatMap((row): CertificateVersion[] => {
    const reader = new RowReader<Column>(table.value, columns, CERTIFICATE_FIELDS, 'metric', row);
    const [serial, number, chart] = [reader.requiredLabel('tool'), reader.requiredLabel('number'), reader.required('chart')];
    const [calibrated, due] = [dateOf(reader, 'calibrated'), dateOf(reader, 'due')];
    const uncertainty = reader.quantity('uncertainty', 'share');
    if (uncertainty === undefined && !reader.has('uncertainty')) reader.required('uncertainty');
    const jointRate = reader.word('jointRate', RATES);
    const photo = reader.text('photo');
    notices.push(...reader.notices);
    if (reader.notices.length > 0 || serial === undefined || number === undefined || chart === undefined) return [];
    if (calibrated === undefined || due === undefined || uncertainty === undefined) return [];
    return [
      {
        serial,
        number,
        calibrated,
        due,
        uncertainty,
        chart,
        ...(jointRate === undefined ? {} : { jointRate }),
        ...(photo === undefined ? {} : { photo: { file: photo, place: reader.at('photo', photo) } }),
      },
    ];
  });
}

/** Year-month-day, or day.month.year, which no one reads as anything else. */
function dateOf(reader: RowReader<Column>, key: Column): CivilDate | undefined {
  const text = reader.required(key);
  if (text === undefined) return undefined;
  const german = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text);
  const date = civilDate(german ? `${german[3]}-${german[2]!.padStart(2, '0')}-${german[1]!.padStart(2, '0')}` : text);
  if (!date) reader.fault(notice('date-unreadable', {}, reader.at(key, text)));
  return date;
}

/**
 * The certificate of a tool that counts on a day: the last one calibrated of those that are valid, else the last one of all, and the plan
 * says what is wrong with it. Two of one day with different numbers are not chosen between.
 */
export function onTheDay(versions: readonly CertificateVersion[], day: CivilDate): Outcome<CertificateVersion> {
  const valid = versions.filter(({ calibrated, due }) => calibrated <= day && day <= due);
  const choice = valid.length > 0 ? valid : versions;
  const last = choice.reduce((top, one) => (one.calibrated > top.calibrated ? one : top));
  const other = choice.find(
    ({ calibrated, number, chart }) => calibrated === last.calibrated && (number !== last.number || chart !== last.chart),
  );
  return other
    ? {
        ok: false,
        notices: [notice('certificates-unclear', { serial: last.serial, first: last.number, second: other.number, day: last.calibrated })],
      }
    : { ok: true, value: last };
}
