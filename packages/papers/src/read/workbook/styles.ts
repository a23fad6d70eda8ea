import { isAnyUnit } from '../quantity.ts';
import { readXml } from './xml.ts';
import type { ZipPart } from './zip.ts';

/** How a number of a cell is shown, as far as its meaning depends on it. */
export type Shown =
  | { readonly kind: 'plain' }
  | { readonly kind: 'date' }
  | { readonly kind: 'percent' }
  | { readonly kind: 'unit'; readonly unit: string };

const PLAIN: Shown = { kind: 'plain' };
/** Built-in formats that show a date, those of East Asian editions among them. Source: ISO/IEC 29500-1, 18.8.30. */
const DATES = new Set([14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 55, 56, 57, 58]);
const PERCENTS = new Set([9, 10]);

/** By number of style: what a number of that style means. */
export function shownBy(part: ZipPart | undefined): readonly Shown[] {
  const shown: Shown[] = [];
  if (!part) return shown;
  const own = new Map<number, Shown>();
  let inCells = false;
  readXml(part, {
    open: (name, attributes) => {
      if (name === 'numFmt') own.set(Number(attributes.numFmtId), shownAs(attributes.formatCode ?? ''));
      else if (name === 'cellXfs') inCells = true;
      else if (name === 'xf' && inCells) {
        const id = Number(attributes.numFmtId ?? 0);
        shown.push(own.get(id) ?? (DATES.has(id) ? { kind: 'date' } : PERCENTS.has(id) ? { kind: 'percent' } : PLAIN));
      }
    },
    close: (name) => {
      if (name === 'cellXfs') inCells = false;
    },
  });
  return shown;
}

/** `0.0 "mm"` shows a unit that no cell text holds; `0 %` shows a hundredth; `dd.mm.yyyy` a date. */
function shownAs(code: string): Shown {
  const first = code.split(';')[0]!;
  const bare = first.replace(/"[^"]*"|\\.|\[[^\]]*\]|_./g, '');
  if (bare.includes('%')) return { kind: 'percent' };
  if (/[yd]/i.test(bare) && !/[0#]/.test(bare)) return { kind: 'date' };
  const unit = /(?:"([^"]*)"|((?:\\.)+))\s*$/.exec(first);
  const text = (unit?.[1] ?? unit?.[2]?.replaceAll('\\', '') ?? '').trim();
  return text !== '' && isAnyUnit(text) ? { kind: 'unit', unit: text } : PLAIN;
}
