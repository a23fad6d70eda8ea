import type { Document, Element } from '@xmldom/xmldom';
import { elementsOf } from './named-cells.ts';

const SPACE = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

const numberOf = (column: string): number => [...column].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
const columnOf = (cell: Element): number => numberOf(/^[A-Z]+/.exec(cell.getAttribute('r') ?? '')?.[0] ?? 'A');

export interface OpenSheet {
  /** Puts a value into a cell and leaves all else of it: its style, the row's height. False where the cell holds a formula of theirs. */
  readonly set: (column: string, row: number, value: string | number, like?: { readonly row: number }) => boolean;
}

/** A sheet's XML, ready to be written into. Rows and cells are found once, also in sheets of many rows. */
export function openSheet(sheet: Document): OpenSheet {
  const data = elementsOf(sheet, 'sheetData')[0]!;
  const rows = new Map(elementsOf(data, 'row').map((row) => [Number(row.getAttribute('r')), row]));
  const rowAt = (number: number): Element => {
    const known = rows.get(number);
    if (known) return known;
    const row = sheet.createElementNS(SPACE, 'row');
    row.setAttribute('r', String(number));
    const after = [...rows].filter(([other]) => other > number).sort(([a], [b]) => a - b)[0]?.[1] ?? null;
    data.insertBefore(row, after);
    rows.set(number, row);
    return row;
  };
  const cellAt = (column: string, number: number): Element => {
    const row = rowAt(number);
    const cells = elementsOf(row, 'c');
    const known = cells.find((cell) => cell.getAttribute('r') === `${column}${number}`);
    if (known) return known;
    const cell = sheet.createElementNS(SPACE, 'c');
    cell.setAttribute('r', `${column}${number}`);
    row.insertBefore(cell, cells.find((one) => columnOf(one) > numberOf(column)) ?? null);
    return cell;
  };
  return {
    set(column, number, value, like) {
      const cell = cellAt(column, number);
      if (elementsOf(cell, 'f').length > 0) return false;
      const style = like && cellAt(column, like.row).getAttribute('s');
      if (style && !cell.hasAttribute('s')) cell.setAttribute('s', style);
      while (cell.firstChild) cell.removeChild(cell.firstChild);
      if (typeof value === 'number') {
        cell.removeAttribute('t');
        const v = sheet.createElementNS(SPACE, 'v');
        v.appendChild(sheet.createTextNode(String(value)));
        cell.appendChild(v);
        return true;
      }
      cell.setAttribute('t', 'inlineStr');
      const [is, t] = [sheet.createElementNS(SPACE, 'is'), sheet.createElementNS(SPACE, 't')];
      t.setAttribute('xml:space', 'preserve');
      t.appendChild(sheet.createTextNode(value));
      is.appendChild(t);
      cell.appendChild(is);
      return true;
    },
  };
}
