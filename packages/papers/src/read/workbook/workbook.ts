import { notice, type Outcome, refused } from '@clampwright/core';
import { broken, WorkbookMisfit } from './misfit.ts';
import { sharedStrings } from './shared-strings.ts';
import { type Around, type SheetRows, sheetRows } from './sheet-rows.ts';
import { shownBy } from './styles.ts';
import { attribute, readXml } from './xml.ts';
import { type ZipPart, zipParts } from './zip.ts';

/** A sheet of a workbook; its rows are read when they are asked for, all or the first ones. */
export interface WorkbookSheet {
  readonly name: string;
  readonly hidden: boolean;
  readonly read: (most?: number) => Outcome<SheetRows>;
}

const MOST_SHEETS = 256;

/** Is it an XLSX file, or another kind of workbook? By its first bytes, whatever it is called. */
export function workbookKind(bytes: Uint8Array): 'xlsx' | 'old' | undefined {
  const begins = (...head: number[]) => head.every((byte, at) => bytes[at] === byte);
  if (begins(0xd0, 0xcf, 0x11, 0xe0)) return 'old';
  return begins(0x50, 0x4b, 0x03, 0x04) ? 'xlsx' : undefined;
}

/** Opens an XLSX file (ISO/IEC 29500, also its strict form). No macro, link or formula is followed. */
export function openWorkbook(bytes: Uint8Array, file: string): Outcome<readonly WorkbookSheet[]> {
  return guarded(file, () => {
    const parts = zipParts(bytes);
    const book = mainPart(parts);
    const folder = book.name.slice(0, book.name.lastIndexOf('/') + 1);
    const targets = relations(parts.get(`${folder}_rels/${book.name.slice(folder.length)}.rels`), folder);
    const byKind = (kind: string) => parts.get([...targets.values()].find((one) => one.kind === kind)?.target ?? '');
    let dateSystem: 1900 | 1904 = 1900;
    const named: { readonly name: string; readonly part: ZipPart; readonly hidden: boolean }[] = [];
    readXml(book, {
      open: (name, attributes) => {
        if (name === 'workbookPr' && /^(1|true)$/.test(attributes.date1904 ?? '')) dateSystem = 1904;
        if (name !== 'sheet' || named.length >= MOST_SHEETS) return;
        const target = targets.get(attribute(attributes, 'id') ?? '');
        const part = target?.kind === 'worksheet' ? parts.get(target.target) : undefined;
        if (part) named.push({ name: attributes.name ?? '', part, hidden: (attributes.state ?? 'visible') !== 'visible' });
      },
    });
    if (named.length === 0) throw broken('it has no sheet');
    let around: Around | undefined;
    const aroundOf = () => {
      around ??= { strings: sharedStrings(byKind('sharedStrings')), shown: shownBy(byKind('styles')), dateSystem };
      return around;
    };
    return named.map(({ name, part, hidden }) => ({
      name,
      hidden,
      read: (most?: number) => guarded(file, () => sheetRows(part, aroundOf(), most)),
    }));
  });
}

function guarded<T>(file: string, work: () => T): Outcome<T> {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    if (error instanceof WorkbookMisfit) return refused(error.reason(file));
    // a length or an offset of the file points outside of it
    if (error instanceof RangeError) return refused(notice('workbook-broken', { problem: 'it is damaged' }, { file }));
    throw error;
  }
}

function mainPart(parts: ReadonlyMap<string, ZipPart>): ZipPart {
  const top = relations(parts.get('_rels/.rels'), '');
  const name = [...top.values()].find(({ kind }) => kind === 'officeDocument')?.target ?? 'xl/workbook.xml';
  const part = parts.get(name);
  if (!part) throw broken(parts.has('mimetype') ? 'it is an OpenDocument file, not XLSX' : 'it is a ZIP file, but no workbook');
  return part;
}

interface Relation {
  readonly kind: string;
  readonly target: string;
}

/** Parts that a part names, by id. Source: ISO/IEC 29500-2, 9.3. */
function relations(part: ZipPart | undefined, folder: string): ReadonlyMap<string, Relation> {
  const found = new Map<string, Relation>();
  if (!part) return found;
  readXml(part, {
    open: (name, { Id, Type, Target, TargetMode }) => {
      if (name !== 'Relationship' || Id === undefined || Target === undefined || TargetMode === 'External') return;
      const target = Target.startsWith('/') ? Target.slice(1) : resolved(folder, Target);
      found.set(Id, { kind: (Type ?? '').slice((Type ?? '').lastIndexOf('/') + 1), target });
    },
  });
  return found;
}

function resolved(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of `${folder}${target}`.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.join('/');
}
