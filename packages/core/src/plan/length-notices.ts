import type { Hexagon } from '../fasteners/hexagon.ts';
import { type Notice, notice } from '../notice/index.ts';
import { length as lengthOf } from '../notice/measure.ts';
import { type Millimetre, mm } from '../quantity.ts';
import { RULE_SETS, type RuleSetId } from '../rules/index.ts';
import type { BoltUnderRule, RuleSet } from '../rules/rule-set.ts';

/**
 * What a bolt must reach to be tightened at all, besides the parts it clamps:
 *
 * - nut and pitch: EN 1090-2:2018 8.2.2, one thread pitch beyond the nut's face for preloaded bolts
 * - nut: its full thread, as by RCSC 2.3.2 and ASME PCC-1 (from memory)
 * - nothing more: such a rule set may mean a screw in a tapped part, which has no nut
 */
type Reach = 'nut and pitch' | 'nut' | 'parts';

const reachOf = (rule: RuleSetId): Reach => {
  const { assemblies }: RuleSet = RULE_SETS[rule];
  if (assemblies === 'EN 14399') return 'nut and pitch';
  return rule.startsWith('rcsc') || rule === 'flange-bolt-stress' ? 'nut' : 'parts';
};

/**
 * Does the nominal bolt length reach through what is clamped (Σt: plates, packs and washers) and through its nut?
 *
 * Nut heights are the greatest of ISO 4032, EN 14399-3 and -4 and ASME B18.2.2, as `hexagonFor` has them; where the size has none, only
 * a bolt that does not even reach through the parts is certain.
 */
export function lengthNotices(
  { length, clampThickness, thread }: Pick<BoltUnderRule, 'length' | 'clampThickness' | 'thread'>,
  rule: RuleSetId,
  hexagon: Pick<Hexagon, 'nutHeight'> | undefined,
): Notice[] {
  if (length === undefined || clampThickness === undefined) return [];
  const measures = { length: lengthOf(length), thickness: lengthOf(clampThickness) };
  const nut = hexagon?.nutHeight;
  if (length < clampThickness && (nut === undefined || reachOf(rule) === 'parts')) return [notice('bolt-below-clamp', measures)];
  if (nut === undefined) return [];
  const beyond = mm(clampThickness + nut + thread.pitch);
  if (beyond <= length) return [];
  const least: Readonly<Record<Reach, Millimetre>> = {
    'nut and pitch': beyond,
    nut: mm(clampThickness + nut),
    parts: clampThickness,
  };
  const needed = least[reachOf(rule)];
  return length < needed
    ? [notice('bolt-too-short', { ...measures, nut: lengthOf(nut), needed: lengthOf(needed) })]
    : [notice('clamp-below-thread', measures)];
}
