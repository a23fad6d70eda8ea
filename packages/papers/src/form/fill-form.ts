import { XMLSerializer } from '@xmldom/xmldom';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { elementsOf, namedCells, parseXml } from './named-cells.ts';
import { openSheet } from './set-cell.ts';

/** A form is a few sheets: what unpacks to more is no form. */
const MOST_UNPACKED = 64 * 1024 * 1024;

export type FormValue = string | number | undefined;

/** What a form can be filled with, by name: one value, or a column that runs down from its cell. */
export type FormFields = ReadonlyMap<string, FormValue | readonly FormValue[]>;

export interface FilledForm {
  readonly bytes: Uint8Array;
  readonly filled: readonly string[];
  /** names of the template that this has no value for: left as they are */
  readonly unknown: readonly string[];
  /** cells that hold a formula of theirs: left as they are */
  readonly formulas: readonly string[];
}

/** Not a workbook, or one that is no form. */
export class NoForm extends Error {}

/**
 * Fills the client's own workbook: every cell that has the name of a field (`joint.tag`) gets its value and keeps its look; a column field
 * (`work.bolt`) runs down from its cell. Everything else in the file stays byte for byte as it was.
 */
export function fillForm(template: Uint8Array, fields: FormFields): FilledForm {
  const files = unpack(template);
  const read = (path: string) => {
    const bytes = files[path];
    if (!bytes) throw new NoForm(`${path} is missing`);
    const text = strFromU8(bytes);
    if (text.includes('<!DOCTYPE')) throw new NoForm(`${path} declares a document type`);
    return parseXml(text);
  };
  const workbook = read('xl/workbook.xml');
  const { cells, pathOf } = namedCells(workbook, read('xl/_rels/workbook.xml.rels'));
  const sheets = new Map<string, ReturnType<typeof read>>();
  const open = new Map<string, ReturnType<typeof openSheet>>();
  const [filled, unknown, formulas]: [string[], string[], string[]] = [[], [], []];
  for (const { name, sheet, column, row } of cells) {
    const path = pathOf.get(sheet);
    if (path === undefined) continue;
    if (!fields.has(name)) {
      if (name.includes('.')) unknown.push(name);
      continue;
    }
    if (!open.has(path)) {
      sheets.set(path, read(path));
      open.set(path, openSheet(sheets.get(path)!));
    }
    const value = fields.get(name);
    const list = Array.isArray(value) ? (value as readonly FormValue[]) : [value as FormValue];
    const done = list.map((one, at) => one === undefined || open.get(path)!.set(column, row + at, one, at > 0 ? { row } : undefined));
    (done.every(Boolean) ? filled : formulas).push(name);
  }
  for (const [path, document] of sheets) files[path] = strToU8(new XMLSerializer().serializeToString(document));
  // whatever is computed from what was filled in is computed again when the file is opened
  elementsOf(workbook, 'calcPr')[0]?.setAttribute('fullCalcOnLoad', '1');
  files['xl/workbook.xml'] = strToU8(new XMLSerializer().serializeToString(workbook));
  return { bytes: zipSync(files), filled, unknown, formulas };
}

function unpack(template: Uint8Array): Record<string, Uint8Array> {
  let unpacked = 0;
  try {
    return unzipSync(template, {
      filter({ originalSize }) {
        unpacked += originalSize;
        if (unpacked > MOST_UNPACKED) throw new NoForm('it unpacks to more than 64 MiB');
        return true;
      },
    });
  } catch (error) {
    throw error instanceof NoForm ? error : new NoForm('it is no XLSX file');
  }
}
