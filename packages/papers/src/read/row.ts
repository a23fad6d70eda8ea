/** A row of cells with the number under which a spreadsheet shows it. */
export interface Row {
  readonly row: number;
  readonly cells: string[];
  /** columns, from 0, that hold a true number like `1.234`: nobody's thousands, whatever the file's decimals are */
  readonly exact?: readonly number[];
}

/** `A`, `B`, … `AA`: how a spreadsheet names a column, from 0. */
export function columnLetter(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetter(Math.floor(column / 26) - 1) + letter;
}
