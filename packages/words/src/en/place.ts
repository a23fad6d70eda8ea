import type { PlaceTexts } from '../notice-texts.ts';

export const placeTexts: PlaceTexts = {
  sheet: 'sheet {sheet}',
  row: 'row {row}',
  column: 'column {column}',
  'column of a workbook': 'column {letter} ({column})',
  'what was read': '{place} (read “{read}”)',
};
