import { DOMParser, type Document, type Element } from '@xmldom/xmldom';

/** A cell that the template's author gave a name. */
export interface NamedCell {
  readonly name: string;
  readonly sheet: string;
  readonly column: string;
  readonly row: number;
}

/** One cell, also as a range of one: `'Bolt record'!$B$4`. */
const TARGET = /^(?:'((?:[^']|'')+)'|([^'!]+))!\$?([A-Z]{1,3})\$?([1-9]\d{0,6})(?::\$?[A-Z]{1,3}\$?\d+)?$/;

export const parseXml = (text: string): Document => new DOMParser().parseFromString(text, 'text/xml');

export const elementsOf = (node: Document | Element, name: string): Element[] => {
  const found = node.getElementsByTagNameNS('*', name);
  return Array.from({ length: found.length }, (_, i) => found.item(i)!);
};

/** The named cells of a workbook and the path of each sheet in its archive. */
export function namedCells(
  workbook: Document,
  relations: Document,
): { readonly cells: readonly NamedCell[]; readonly pathOf: ReadonlyMap<string, string> } {
  const targets = new Map(
    elementsOf(relations, 'Relationship').map((one) => [one.getAttribute('Id') ?? '', one.getAttribute('Target') ?? '']),
  );
  const pathOf = new Map(
    elementsOf(workbook, 'sheet').map((one) => {
      const target = targets.get(one.getAttribute('r:id') ?? '') ?? '';
      return [one.getAttribute('name') ?? '', target.startsWith('/') ? target.slice(1) : `xl/${target}`];
    }),
  );
  const cells = elementsOf(workbook, 'definedName').flatMap((one): NamedCell[] => {
    const at = TARGET.exec((one.textContent ?? '').trim());
    const name = one.getAttribute('name') ?? '';
    return at && name !== '' ? [{ name, sheet: (at[1] ?? at[2]!).replace(/''/g, "'"), column: at[3]!, row: Number(at[4]) }] : [];
  });
  return { cells, pathOf };
}
