import type { Notice } from '@clampwright/core';
import { ENGLISH_WORDS } from './words.ts';

/** What is wrong, in the trade's words; and what would mend it. */
export const { says, remedy } = ENGLISH_WORDS;

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
