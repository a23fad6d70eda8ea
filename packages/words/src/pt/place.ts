import type { PlaceTexts } from '../notice-texts.ts';

export const placeTexts: PlaceTexts = {
  sheet: 'folha {sheet}',
  row: 'linha {row}',
  column: 'coluna {column}',
  'column of a workbook': 'coluna {letter} ({column})',
  'what was read': '{place} (lido «{read}»)',
};
