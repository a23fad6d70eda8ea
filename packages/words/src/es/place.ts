import type { PlaceTexts } from '../notice-texts.ts';

export const placeTexts: PlaceTexts = {
  sheet: 'hoja {sheet}',
  row: 'fila {row}',
  column: 'columna {column}',
  'column of a workbook': 'columna {letter} ({column})',
  'what was read': '{place} (leído «{read}»)',
};
