/** Schedules a crew can follow: custom, one setting a pass, several settings a pass. */
export { clusterToLevels, nearestLevel } from './cluster.ts';
export { customSchedule, MOST_PASSES } from './custom.ts';
export { type Evenness, evenness } from './evenness.ts';
export { oneSettingSchedule } from './one-setting.ts';
export {
  type Level,
  type PlayedPass,
  playPass,
  ROUND_ORDERS,
  type RoundOrder,
  type SchedulePass,
  type ScheduleTask,
  turnsOf,
} from './schedule.ts';
export { type SeveralSettings, severalSettingsSchedule } from './several-settings.ts';
