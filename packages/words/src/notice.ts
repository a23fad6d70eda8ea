import type { Notice, NoticeCode } from '@clampwright/core';
import { EN_NOTICES } from './en/index.ts';
import { fill } from './message.ts';
import type { NoticeText } from './notice-texts.ts';
import type { UnitSystem } from './units.ts';

const TEXTS: Readonly<Record<NoticeCode, NoticeText>> = EN_NOTICES;

/** What is wrong, in the trade's words. */
export const says = ({ code, params }: Notice, units: UnitSystem = 'metric'): string => fill(TEXTS[code].says, params, units);

/** What would mend it. */
export const remedy = ({ code, params }: Notice, units: UnitSystem = 'metric'): string => fill(TEXTS[code].remedy, params, units);

/** Where it was found: `joints.csv, row 14, column clamp length (read “abc”)`; in a workbook with sheet and letter. */
export function whereabouts({ place }: Notice): string {
  if (!place) return '';
  const { file, sheet, row, column, letter, path } = place;
  const parts = [
    file,
    sheet && `sheet ${sheet}`,
    row === undefined ? undefined : `row ${row}`,
    column && (sheet && letter ? `column ${letter} (${column})` : `column ${column}`),
    path,
  ]
    .filter((part) => part !== undefined && part !== '')
    .join(', ');
  return place.read === undefined ? parts : `${parts} (read “${place.read}”)`;
}
