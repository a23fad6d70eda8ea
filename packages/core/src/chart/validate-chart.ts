import { type Notice, notice, type Place } from '../notice/index.ts';
import { torque } from '../notice/measure.ts';
import { inNewtonMetre } from '../quantity.ts';
import { gearOf, type Setting, type SettingChart, settingText } from './setting-chart.ts';

/** No hand-held or hydraulic turning tool reaches beyond this; a larger figure is a slip of unit or digits. Own limit, N·m. */
const LARGEST_NM = 100_000;

/**
 * Everything wrong with a chart: all faults, not the first. An empty list means it may be used.
 *
 * Looks for: torques that are not positive numbers or absurd; a setting listed twice; a gear whose torque falls or stays as
 * its label rises; labels missing inside a numbered scale; a chart with no setting for tightening; a certificate of another serial.
 * A chart is never smoothed.
 */
export function validateChart(chart: SettingChart, serial: string, place: Place = {}): Notice[] {
  const at = ({ row }: Setting): Place => (row === undefined ? place : { ...place, row });
  const notices: Notice[] = [];
  if (chart.settings.every(({ looseningOnly }) => looseningOnly)) notices.push(notice('chart-empty', { serial }, place));
  if (!sameSerial(chart.certificate.serial, serial)) {
    notices.push(notice('chart-other-serial', { serial, chartSerial: chart.certificate.serial }, place));
  }
  const seen = new Map<string, Setting>();
  for (const setting of chart.settings) {
    const text = settingText(chart, setting.labels);
    if (!isPlausible(setting)) {
      notices.push(notice('chart-torque-absurd', { setting: text }, at(setting)));
      continue;
    }
    const twin = seen.get(text);
    if (twin)
      notices.push(
        notice('chart-setting-twice', { setting: text, first: torque(twin.torque), second: torque(setting.torque) }, at(setting)),
      );
    seen.set(text, setting);
  }
  for (const gear of gears(chart)) notices.push(...gearFaults(chart, gear.filter(isPlausible), at));
  return notices;
}

const isPlausible = ({ torque: value }: Setting) => value > 0 && inNewtonMetre(value) <= LARGEST_NM;

/** Serial numbers compare without regard to case and blanks. */
export const sameSerial = (a: string, b: string): boolean => a.replace(/\s+/g, '').toUpperCase() === b.replace(/\s+/g, '').toUpperCase();

/** The settings of each gear, in the order of their last label. */
export function gears(chart: SettingChart): Setting[][] {
  const byGear = new Map<string, Setting[]>();
  for (const setting of chart.settings) {
    const list = byGear.get(gearOf(setting));
    if (list) list.push(setting);
    else byGear.set(gearOf(setting), [setting]);
  }
  return [...byGear.values()].map((list) => [...list].sort((a, b) => position(a) - position(b)));
}

/** Place of a setting on its scale: the number of its last label; a label that is no number keeps the chart's order. */
const position = ({ labels }: Setting): number => Number(String(labels.at(-1)).replace(',', '.')) || 0;

function gearFaults(chart: SettingChart, gear: readonly Setting[], at: (setting: Setting) => Place): Notice[] {
  const notices: Notice[] = [];
  for (let i = 1; i < gear.length; i += 1) {
    const [before, after] = [gear[i - 1]!, gear[i]!];
    if (settingText(chart, before.labels) !== settingText(chart, after.labels) && after.torque <= before.torque) {
      notices.push(
        notice(
          'chart-not-monotone',
          {
            lower: settingText(chart, before.labels),
            lowerTorque: torque(before.torque),
            upper: settingText(chart, after.labels),
            upperTorque: torque(after.torque),
          },
          at(after),
        ),
      );
    }
    const steps = chart.scales.length > 1 && Number.isInteger(position(before)) && Number.isInteger(position(after));
    if (steps && position(after) - position(before) > 1) {
      notices.push(notice('chart-gap', { lower: settingText(chart, before.labels), upper: settingText(chart, after.labels) }, at(after)));
    }
  }
  return notices;
}
