/** Every text people read. */
export { dayLines, fewTags } from './day-text.ts';
export { inspectionText } from './inspection-text.ts';
export { LANGUAGES, type Language } from './language.ts';
export { fill } from './message.ts';
export { remedy, says, whereabouts } from './notice.ts';
export { type LabelKey, label, levelText } from './page-words.ts';
export {
  cautionText,
  citedSource,
  datumText,
  endText,
  patternText,
  settingLine,
  sourceText,
  stepText,
  turnedText,
  verdictText,
} from './plan-words.ts';
export type { PrintedKey } from './printed/texts.ts';
export { figure, say, type UnitSystem, unitOf } from './units.ts';
export { ENGLISH_WORDS, loadWords, type Words } from './words.ts';
