/** A value of a cell: numbers stay numbers, in the unit of their heading; a date is its civil day, an instant its ISO text in UTC. */
export type SheetValue = string | number | boolean | undefined;

export interface SheetColumn<R> {
  /** with its unit in brackets where it has one */
  readonly head: string;
  readonly kind: 'text' | 'number' | 'date' | 'instant';
  /** decimals shown; the number itself is not rounded */
  readonly digits?: number;
  readonly value: (row: R) => SheetValue;
}

/** A table as it goes into a spreadsheet or a CSV file. */
export interface SheetTable {
  /** of the sheet, and of the file */
  readonly name: string;
  readonly columns: readonly Omit<SheetColumn<never>, 'value'>[];
  readonly rows: readonly (readonly SheetValue[])[];
}

export const sheetTable = <R>(name: string, columns: readonly SheetColumn<R>[], rows: readonly R[]): SheetTable => ({
  name,
  columns,
  rows: rows.map((row) => columns.map(({ value }) => value(row))),
});
