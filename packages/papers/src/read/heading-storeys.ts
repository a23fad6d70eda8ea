import { headingLine } from './headings/index.ts';
import { isAnyUnit } from './quantity.ts';

/** `[kN]` or `(kN)` in a cell of its own, or only the unit. */
const unitOf = (cell: string): string | undefined => {
  const bare = /^(?:\[(.*)\]|\((.*)\))$/.exec(cell);
  if (bare) return bare[1] ?? bare[2];
  return isAnyUnit(cell) || cell === 'bar' ? cell : undefined;
};

/** A row of nothing but units, under its headings. */
export function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.map(headingLine).filter(Boolean);
  return filled.some((cell) => /\p{L}|°|%/u.test(cell)) && filled.every((cell) => unitOf(cell) !== undefined);
}

/**
 * Headings that stand over one another as one row of headings: `Bolt` above `Size` and `Length` gives `Bolt Size` and `Bolt Length`, a
 * row of units below gives `Preload [kN]`. `undefined` where the lower row is no such row, but the first of the table.
 *
 * @param knows whether a heading means something in the table that is looked for
 * @example pairedHeadings(['Joint', 'Preload'], ['', 'kN'], () => true) // ['Joint', 'Preload [kN]']
 */
export function pairedHeadings(
  above: readonly string[],
  below: readonly string[],
  knows: (heading: string) => boolean,
): string[] | undefined {
  const upper = above.map(headingLine);
  const lower = below.map(headingLine);
  const units = isUnitRow(below);
  let group = '';
  const paired: string[] = [];
  for (let at = 0; at < Math.max(upper.length, lower.length); at += 1) {
    const [top = '', low = ''] = [upper[at], lower[at]];
    // a heading over several columns stands in the first of them
    if (top !== '') group = top;
    const both = joined(top, low, group, units, knows);
    // what is neither known nor free of figures is a value, and its row the first of the table
    if (!units && low !== '' && /\d/.test(low) && !knows(both)) return undefined;
    paired.push(both);
  }
  return paired;
}

function joined(top: string, low: string, group: string, units: boolean, knows: (heading: string) => boolean): string {
  if (low === '' || low === top) return top;
  const unit = unitOf(low);
  if (units) return top === '' || unit === '' || unit === '-' ? top : `${top} [${unit}]`;
  if (group === '') return low;
  const both = `${group} ${low}`;
  // "Bolt" over "Grade" says no more than "Grade"; "Socket" over "Length" is no length of a bolt
  return !knows(both) && knows(group) && knows(low) ? low : both;
}
