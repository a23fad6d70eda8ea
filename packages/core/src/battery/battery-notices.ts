import { type Notice, notice } from '../notice/index.ts';
import { isGauge, temperatureNotices } from './battery.ts';

/**
 * What is wrong with a battery before work or before charging.
 *
 * Gauges read in quarters; from about 30 % down, one segment, the crew decides. A new battery comes part-charged. Common practice, no source.
 */
export function batteryNotices(battery: {
  readonly serial: string;
  readonly temperature: number;
  readonly lit: number;
  readonly neverCharged?: boolean;
  readonly charging: boolean;
}): Notice[] {
  const { serial, temperature, lit, neverCharged = false, charging } = battery;
  return [
    ...temperatureNotices(serial, temperature, charging ? 'charge' : 'work'),
    ...(isGauge(lit) ? [] : [notice('battery-gauge', { serial, lit: String(lit) })]),
    ...(neverCharged ? [notice('battery-first-charge', { serial })] : []),
    ...(!charging && isGauge(lit) && lit <= 1 ? [notice('battery-low', { serial })] : []),
  ];
}
