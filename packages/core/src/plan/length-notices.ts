import { LEAST_PROTRUSION } from '../assembly/checks.ts';
import type { Hexagon } from '../fasteners/hexagon.ts';
import { type Notice, notice } from '../notice/index.ts';
import { length as lengthOf } from '../notice/measure.ts';
import { mm } from '../quantity.ts';
import type { BoltUnderRule, RuleSet } from '../rules/rule-set.ts';

/**
 * Does the nominal bolt length reach through what is clamped (Σt: plates, packs and washers) and through its nut?
 *
 * Nut heights are the greatest of ISO 4032, EN 14399-3 and -4 and ASME B18.2.2, as `hexagonFor` has them; where the size has none, only
 * a bolt that does not even reach through the parts is certain.
 */
export function lengthNotices(
  { length, clampThickness, thread }: Pick<BoltUnderRule, 'length' | 'clampThickness' | 'thread'>,
  reach: RuleSet['reach'],
  hexagon: Pick<Hexagon, 'nutHeight'> | undefined,
): Notice[] {
  if (length === undefined || clampThickness === undefined) return [];
  const measures = { length: lengthOf(length), thickness: lengthOf(clampThickness) };
  const nut = hexagon?.nutHeight;
  if (length < clampThickness && (nut === undefined || reach === undefined)) return [notice('bolt-below-clamp', measures)];
  if (nut === undefined) return [];
  const beyond = mm(clampThickness + nut + LEAST_PROTRUSION * thread.pitch);
  if (beyond <= length) return [];
  const needed = reach === 'nut and pitch' ? beyond : reach === 'nut' ? mm(clampThickness + nut) : clampThickness;
  return length < needed
    ? [notice('bolt-too-short', { ...measures, nut: lengthOf(nut), needed: lengthOf(needed) })]
    : [notice('clamp-below-thread', measures)];
}
