import { tooLarge } from './misfit.ts';
import { readXml } from './xml.ts';
import type { ZipPart } from './zip.ts';

const MOST_STRINGS = 2_000_000;
/** A cell holds 32 767 characters at most. Source: ISO/IEC 29500-1 18.3.1.96 and the programs' own limit. */
export const LONGEST_CELL = 32_767;

/** The strings that cells name by number. Source: ISO/IEC 29500-1, 18.4. */
export function sharedStrings(part: ZipPart | undefined): readonly string[] {
  const strings: string[] = [];
  if (!part) return strings;
  let text = '';
  let inText = false;
  let spoken = 0;
  readXml(part, {
    open: (name) => {
      if (name === 'si') text = '';
      else if (name === 't') inText = spoken === 0;
      else if (name === 'rPh') spoken += 1;
    },
    text: (more) => {
      if (inText && text.length <= LONGEST_CELL) text += more;
    },
    close: (name) => {
      if (name === 't') inText = false;
      else if (name === 'rPh') spoken -= 1;
      else if (name === 'si') {
        if (strings.length >= MOST_STRINGS) throw tooLarge(`${MOST_STRINGS} strings`);
        strings.push(unescaped(text));
      }
    },
  });
  return strings;
}

/** `_x000D_` stands for a character that XML cannot hold. Source: ISO/IEC 29500-1, 22.4.2.4. */
export const unescaped = (text: string): string =>
  text.includes('_x') ? text.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16))) : text;
