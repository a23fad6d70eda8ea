import { inch } from '../quantity.ts';
import { inchSize } from './inch-size.ts';
import { INCH_THREADS, type InchSeries, inchThread } from './inch-threads.ts';
import type { Thread } from './thread.ts';

/** What a bare size stands for: UNC; on a flange stud UNC up to and including 1 in, 8UN above (ASME PCC-1:2013 Table 1, B16.5). */
export type InchUsage = 'structural' | 'flange-stud';

/** A size, then threads per inch or a series or both: `3/4-10 UNC`, `1 1/8-8UN`, `7/8-14`, `3/4 UNC`. */
const FORM =
  /^(?<size>.+?)(?:[\s-]+(?<count>\d+(?:\.\d+)?)\s*-?\s*(?<series>UNR?C|UNR?F|UNR?)?|\s*-?\s*(?<alone>UNR?C|UNR?F|8\s*-?\s*UNR?))(?:\s*-\s*[123]A)?$/i;

/**
 * The unified inch thread a text names.
 *
 * A bare size is UNC; with usage `flange-stud` it is 8UN above 1 in.
 *
 * @example
 * expect(findInchThread('3/4').designation).toBe('3/4-10 UNC');
 * expect(findInchThread('1-1/8-8UN').designation).toBe('1 1/8-8UN');
 * expect(findInchThread('1 1/8', 'flange-stud').designation).toBe('1 1/8-8UN');
 * expect(findInchThread('3/4-11')).toBe(undefined);
 */
export function findInchThread(designation: string, usage: InchUsage = 'structural'): Thread | undefined {
  const text = designation.trim().replace(/["”″]/g, '');
  const bare = inchSize(text);
  if (bare !== undefined) return inchThread(inch(bare), usage === 'flange-stud' && bare > 1 ? '8UN' : 'UNC');
  const parts = FORM.exec(text)?.groups;
  const size = parts?.size === undefined ? undefined : inchSize(parts.size);
  if (!parts || size === undefined) return undefined;
  if (parts.alone !== undefined) return inchThread(inch(size), seriesOf(parts.alone));
  const pitch = inch(1 / Number(parts.count));
  const wanted = parts.series === undefined || /^UNR?$/i.test(parts.series) ? undefined : seriesOf(parts.series);
  return INCH_THREADS.find(
    (one) =>
      Math.abs(one.diameter - inch(size)) < 1e-6 && Math.abs(one.pitch - pitch) < 1e-6 && (wanted === undefined || one.series === wanted),
  );
}

/** UNR threads differ from UN in the rounding of the root only. */
function seriesOf(text: string): InchSeries {
  const plain = text.replace(/[\s-]/g, '').toUpperCase().replace('UNR', 'UN');
  return plain === '8UN' ? '8UN' : plain === 'UNF' ? 'UNF' : 'UNC';
}
