import type { RuleSetId } from '../rules/index.ts';
import type { AssemblySystem } from '../rules/rule-set.ts';
import type { Source } from '../source.ts';

/** What is looked at before a bolt may be tightened. */
export const ASSEMBLY_CHECKS = [
  'washer under the turned part',
  'washer chamfer outward',
  'nut marking outward',
  'thread protrudes',
  'clear threads in grip',
  'bevel washers on slopes',
  'packing plates',
  'no coating under washers',
  'slip surfaces as specified',
  'snug: firm contact',
  'gasket new and of the list',
  'flange faces clean',
  'flange gap and alignment',
  'lubricant as tested',
] as const;
export type AssemblyCheck = (typeof ASSEMBLY_CHECKS)[number];

/** What decides which checks a joint needs. */
export interface AssembledJoint {
  readonly rule: RuleSetId;
  readonly system: AssemblySystem;
  readonly slopedFaces: 0 | 1 | 2;
  readonly gasket: boolean;
  /** where the specification says; asked in any preloaded structural joint as long as nobody does */
  readonly slipResistant?: boolean;
  readonly packs?: boolean;
}

/** One check with where it comes from. */
export interface RequiredCheck {
  readonly check: AssemblyCheck;
  readonly source: Source;
}

const en = (clause: string): Source => ({ standard: 'EN 1090-2', edition: '2018', clause, provenance: 'memory' });
const rcsc: Source = { standard: 'RCSC', edition: '2014', clause: '6 and 8', provenance: 'memory' };
const pcc: Source = { standard: 'ASME PCC-1', edition: '2013', clause: '4 to 6', provenance: 'memory' };
const practice: Source = { standard: 'common practice', provenance: 'common-practice' };

const isEn = (rule: RuleSetId) => rule.startsWith('en1090') || rule.startsWith('de-');

/**
 * The checks of a joint before its first bolt, in the order a crew comes to them.
 *
 * @example
 * const joint = { rule: 'en1090-torque', system: 'HV', slopedFaces: 0, gasket: false, slipResistant: false, packs: false };
 * expect(assemblyChecks(joint).map(({ check }) => check)).toContain('washer chamfer outward');
 */
export function assemblyChecks({
  rule,
  system,
  slopedFaces,
  gasket,
  slipResistant = !gasket && system !== 'plain',
  packs = slipResistant,
}: AssembledJoint): RequiredCheck[] {
  const source = isEn(rule) ? en('8.2 and 8.5') : rule.startsWith('rcsc') ? rcsc : gasket ? pcc : practice;
  const preloaded = system !== 'plain' || rule.startsWith('rcsc');
  const all: readonly (readonly [AssemblyCheck, boolean])[] = [
    ['flange faces clean', gasket],
    ['gasket new and of the list', gasket],
    ['packing plates', packs],
    ['slip surfaces as specified', slipResistant],
    ['no coating under washers', preloaded],
    ['washer under the turned part', true],
    ['washer chamfer outward', system !== 'plain'],
    ['bevel washers on slopes', slopedFaces > 0],
    ['nut marking outward', preloaded],
    ['clear threads in grip', preloaded && isEn(rule)],
    ['thread protrudes', true],
    ['lubricant as tested', true],
    ['flange gap and alignment', gasket],
    ['snug: firm contact', true],
  ];
  return all.filter(([, needed]) => needed).map(([check]) => ({ check, source }));
}

/** Threads that must stick out of the nut, in pitches. EN 1090-2:2018 8.2.2 (from memory): one at least. */
export const LEAST_PROTRUSION = 1;
/** Full threads between the nut's bearing face and the shank. EN 1090-2:2018 8.2.2 (from memory): four for preloaded bolts. */
export const LEAST_CLEAR_THREADS = 4;
