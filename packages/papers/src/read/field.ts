import type { Dimension } from './quantity.ts';

/** What a column of a table means, and its dimension where it is a quantity. Headings stand in `headings`, a file for each language. */
export interface Field {
  readonly says: string;
  readonly dimension?: Dimension;
}
