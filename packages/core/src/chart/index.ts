/** Setting charts: measured, validated, chosen from; nothing in them is smoothed or invented. */
export { calibrationNotices, calibrationState } from './calibration.ts';
export {
  type Choice,
  type ChosenSetting,
  chooseSetting,
  preloadVariation,
  type SettingWish,
} from './choose-setting.ts';
export { fractionalStep, type Gear, nearestSetting, torqueAtStep } from './interpolate.ts';
export { meanExcess, meanShortfall, normalCdf } from './normal-loss.ts';
export { type Certificate, gearOf, type Scale, type Setting, type SettingChart, settingText, type ToolKind } from './setting-chart.ts';
export { torqueAt } from './torque-at.ts';
export { gears, sameSerial, validateChart } from './validate-chart.ts';
