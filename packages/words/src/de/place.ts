import type { PlaceTexts } from '../notice-texts.ts';

export const placeTexts: PlaceTexts = {
  sheet: 'Blatt {sheet}',
  row: 'Zeile {row}',
  column: 'Spalte {column}',
  'column of a workbook': 'Spalte {letter} ({column})',
  'what was read': '{place} (gelesen: „{read}“)',
};
