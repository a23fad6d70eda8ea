import { type CivilDate, daysBetween } from '../date.ts';
import { type Notice, notice } from '../notice/index.ts';

/** What a certificate of a torque tool must hold before its chart is used, as it was typed. */
export interface TypedCertificate {
  readonly number: string;
  readonly serial: string;
  readonly laboratory: string;
  readonly calibrated: CivilDate;
  readonly due: CivilDate;
  /** expanded uncertainty, k = 2, share */
  readonly uncertainty?: number;
  /** reference standard the laboratory used */
  readonly reference: string;
  readonly direction: 'tightening' | 'loosening' | 'both';
  /** accessories the readings were taken with */
  readonly adapter: string;
  readonly typedBy: string;
  readonly checkedBy?: string;
}

const WORDS = ['number', 'serial', 'laboratory', 'reference', 'adapter', 'typedBy'] as const;

/**
 * What is missing or contradicts itself in a typed certificate, all at once. A hire tool's certificate is typed by one person and read
 * against the paper by another; only then its settings count.
 *
 * Source: ISO/IEC 17025 and ISO 6789-2 (from memory); the second pair of eyes is common practice, no source.
 */
export function certificateNotices(given: TypedCertificate, serialOnTool: string, workDate: CivilDate): Notice[] {
  const notices: Notice[] = WORDS.filter((word) => given[word].trim() === '').map((word) => notice('certificate-word-missing', { word }));
  if (given.uncertainty === undefined) notices.push(notice('certificate-word-missing', { word: 'uncertainty' }));
  else if (!(given.uncertainty > 0 && given.uncertainty < 0.2)) notices.push(notice('certificate-uncertainty-absurd', {}));
  if (given.serial.trim() !== '' && given.serial.trim().toUpperCase() !== serialOnTool.trim().toUpperCase()) {
    notices.push(notice('certificate-other-serial', { serial: given.serial, tool: serialOnTool }));
  }
  if (daysBetween(given.calibrated, given.due) <= 0)
    notices.push(notice('certificate-dates-crossed', { calibrated: given.calibrated, due: given.due }));
  if (daysBetween(given.calibrated, workDate) < 0) notices.push(notice('certificate-from-future', { calibrated: given.calibrated }));
  if (given.checkedBy === undefined || given.checkedBy.trim() === '') notices.push(notice('certificate-unchecked', {}));
  else if (given.checkedBy.trim() === given.typedBy.trim()) notices.push(notice('certificate-same-person', { person: given.typedBy }));
  return notices;
}
