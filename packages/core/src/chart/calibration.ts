import { type CivilDate, daysBetween } from '../date.ts';
import { type Notice, notice } from '../notice/index.ts';
import type { SettingChart } from './setting-chart.ts';

/** Warn this long before a calibration falls due: own choice. */
const SOON_DAYS = 14;

/**
 * Is the calibration valid on the work date? The due day itself still counts; a date before the calibration does not.
 *
 * @example
 * expect(calibrationState({ calibrated: '2025-12-01', due: '2026-11-30' }, '2026-11-30')).toBe('valid');
 * expect(calibrationState({ calibrated: '2025-12-01', due: '2026-11-30' }, '2026-12-01')).toBe('expired');
 */
export function calibrationState(
  certificate: { calibrated?: CivilDate; due: CivilDate },
  workDate: CivilDate,
): 'valid' | 'expired' | 'not yet' {
  if (workDate > certificate.due) return 'expired';
  return certificate.calibrated !== undefined && workDate < certificate.calibrated ? 'not yet' : 'valid';
}

/** What the certificate says against using a tool on a day. */
export function calibrationNotices(chart: SettingChart, serial: string, workDate: CivilDate): Notice[] {
  const { certificate } = chart;
  const state = calibrationState(certificate, workDate);
  if (state === 'expired') return [notice('calibration-expired', { serial, due: certificate.due, workDate })];
  if (state === 'not yet') return [notice('calibration-later', { serial, calibrated: certificate.calibrated, workDate })];
  const days = daysBetween(workDate, certificate.due);
  return days <= SOON_DAYS ? [notice('calibration-due-soon', { serial, due: certificate.due, days })] : [];
}
