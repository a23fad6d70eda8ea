import { type Notice, notice } from '../notice/index.ts';
import { length } from '../notice/measure.ts';
import type { Millimetre } from '../quantity.ts';
import { packingAllowed, STEP_BETWEEN_PLATES } from '../rules/en-1090-assembly.ts';
import { LEAST_CLEAR_THREADS, LEAST_PROTRUSION } from './checks.ts';

/** What a crew measures on one bolt before it is tightened. */
export interface MeasuredBolt {
  readonly bolt: number;
  readonly pitch: Millimetre;
  /** thread that sticks out of the nut */
  readonly protrusion: Millimetre;
  /** full threads between nut and shank; absent where nobody can see them */
  readonly clearThreads?: number;
  readonly preloaded: boolean;
}

/**
 * Protrusion of at least one pitch; clear full threads under the nut: four where the bolt is preloaded, one else.
 *
 * Source: EN 1090-2:2018 8.2.2 (from memory); HV assemblies go by their own table of clamp lengths.
 *
 * @example
 * const bolt = { bolt: 7, pitch: mm(3), protrusion: mm(2), clearThreads: 3, preloaded: true };
 * expect(threadNotices(bolt).map(({ code }) => code)).toEqual(['protrusion-short', 'clear-threads-few']);
 */
export function threadNotices({ bolt, pitch, protrusion, clearThreads, preloaded }: MeasuredBolt): Notice[] {
  const wanted = preloaded ? LEAST_CLEAR_THREADS : 1;
  return [
    ...(protrusion >= LEAST_PROTRUSION * pitch
      ? []
      : [notice('protrusion-short', { bolt, found: length(protrusion), wanted: length(pitch) })]),
    ...(clearThreads === undefined || clearThreads >= wanted ? [] : [notice('clear-threads-few', { bolt, found: clearThreads, wanted })]),
  ];
}

/** Plates of one layer as they lie, and what was put between. */
export interface FitUp {
  readonly step: Millimetre;
  readonly preloaded: boolean;
  readonly packs: readonly Millimetre[];
}

/**
 * Step between plates of one layer, and packing plates: at least 2 mm each, at most three.
 *
 * Source: EN 1090-2:2018 8.3 (published).
 *
 * @example
 * expect(fitUpNotices({ step: mm(1.5), preloaded: true, packs: [] }).map(({ code }) => code)).toEqual(['plates-step']);
 * expect(fitUpNotices({ step: mm(1.5), preloaded: false, packs: [mm(2)] })).toEqual([]);
 */
export function fitUpNotices({ step, preloaded, packs }: FitUp): Notice[] {
  const allowed = STEP_BETWEEN_PLATES[preloaded ? 'preloaded' : 'general'];
  return [
    ...(step <= allowed ? [] : [notice('plates-step', { found: length(step), allowed: length(allowed) })]),
    ...(packs.every((thickness) => packingAllowed(thickness, packs.length)) ? [] : [notice('packs-wrong', { count: packs.length })]),
  ];
}

/** Slip surface, by its class (EN 1090-2: A to D; RCSC: A, B), as specified and as found; a class that nobody could name counts as not found. */
export const slipSurfaceNotices = (specified: string, found: string | undefined): Notice[] =>
  found === specified ? [] : [notice('slip-surface-other', { specified, found: found ?? '?' })];

/** A gasket as it goes in, and what the specification wants. */
export interface GasketRecord {
  readonly type: string;
  readonly rating: string;
  readonly isNew: boolean;
  /** seating faces looked at, clean and undamaged; `undefined`: nobody looked */
  readonly facesSound?: boolean;
}

/**
 * What keeps a flange from being closed on this gasket: another type or rating than specified, one used before, faces not looked at or
 * not sound.
 *
 * Source: ASME PCC-1:2013 sections 4 to 6 (from memory).
 *
 * @example
 * const wanted = { type: 'spiral wound', rating: 'Class 300' };
 * const found = { type: 'Spiral wound ', rating: 'class 150', isNew: false };
 * expect(gasketNotices(found, wanted).map(({ code }) => code)).toEqual(['gasket-other', 'gasket-used', 'gasket-faces']);
 */
export function gasketNotices(record: GasketRecord, wanted: Pick<GasketRecord, 'type' | 'rating'>): Notice[] {
  const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();
  const asWanted = same(record.type, wanted.type) && same(record.rating, wanted.rating);
  const words = ({ type, rating }: Pick<GasketRecord, 'type' | 'rating'>) => `${type.trim()}, ${rating.trim()}`;
  return [
    ...(asWanted ? [] : [notice('gasket-other', { found: words(record), wanted: words(wanted) })]),
    ...(record.isNew ? [] : [notice('gasket-used', {})]),
    ...(record.facesSound === true ? [] : [notice('gasket-faces', {})]),
  ];
}
