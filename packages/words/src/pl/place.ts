import type { PlaceTexts } from '../notice-texts.ts';

export const placeTexts: PlaceTexts = {
  sheet: 'arkusz {sheet}',
  row: 'wiersz {row}',
  column: 'kolumna {column}',
  'column of a workbook': 'kolumna {letter} ({column})',
  'what was read': '{place} (odczytano „{read}”)',
};
