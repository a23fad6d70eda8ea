import type { ScaleName, TradeTexts } from './app/trade.ts';

/** The words before the labels of a setting, at the beginning of each of its parts. */
const SCALE_NAMES = /(?<=^|, )(gear|step|pump pressure|air pressure|scale)(?= )/g;

/** A setting as the tool shows it: its labels, with gear and step in the reader's language. */
export const settingText = (setting: string, { scale }: Pick<TradeTexts, 'scale'>): string =>
  setting.replace(SCALE_NAMES, (name) => scale[name as ScaleName]);
