import type { NewtonMillimetre } from '../quantity.ts';
import { type SettingChart, settingText } from './setting-chart.ts';

/** Blanks and capitals say nothing: people write a setting by hand. */
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim().toLowerCase();

/**
 * Torque of a setting as it is written, `gear 2, step 7`; undefined where the chart has no such setting.
 *
 * @example
 * const chart = { scales: [{ name: 'gear' }, { name: 'step' }], settings: [{ labels: ['2', '7'], torque: Nm(318) }] };
 * expect(torqueAt(chart, 'Gear 2,  step 7')).toBe(Nm(318));
 * expect(torqueAt(chart, 'gear 2, step 8')).toBe(undefined);
 */
export const torqueAt = (chart: Pick<SettingChart, 'scales' | 'settings'>, setting: string): NewtonMillimetre | undefined =>
  chart.settings.find(({ labels }) => plain(settingText(chart, labels)) === plain(setting))?.torque;
