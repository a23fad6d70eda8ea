import type { Hexagon, HexagonProduct } from '../fasteners/hexagon.ts';
import { hexagonFor } from '../fasteners/hexagon.ts';
import { isMetric } from '../fasteners/thread.ts';
import type { Subgroup } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { percent } from '../notice/measure.ts';
import { N } from '../quantity.ts';
import type { RuleSetId } from '../rules/index.ts';
import type { AssemblySystem, BoltUnderRule, RuleSet, Tightening } from '../rules/rule-set.ts';
import { expectedRotation, NO_PRELOAD, ROTATION_SOURCE, type SolidJoint, solidResilience } from '../stiffness/expected-rotation.ts';
import { yieldUtilisation } from '../torque/combined-stress.ts';
import { shankTorsion } from '../torque/tightening-torque.ts';
import type { Context, ReadyTool } from './context.ts';
import { lengthNotices } from './length-notices.ts';
import type { RotationPlan, StepPlan, StepSetting, SubgroupPlan, TighteningPlan } from './plan.ts';
import { preloadNotices } from './preload-notices.ts';
import { preloadContributions, preloadScatter } from './preload-scatter.ts';
import { resolveBolt } from './resolve-bolt.ts';
import { settleSteps, TESTED_VARIATION, UNMEASURED_VARIATION } from './step-settings.ts';

export interface PlannedSubgroup {
  readonly plan: SubgroupPlan;
  readonly tightening?: Tightening;
  readonly notices: readonly Notice[];
}

/** Accuracy the torque method of EN 1090-2 asks of a wrench: a repeatability that large leaves nothing for bias. */
const METHOD_ACCURACY = 0.04;

/** One subgroup: the rule set's answer for its bolt, the settings for it, and what speaks against them. */
export function planSubgroup(
  context: Context,
  subgroup: Subgroup,
  rule: { readonly id: RuleSetId; readonly rule: RuleSet; readonly edition: string },
  tools: readonly ReadyTool[],
): PlannedSubgroup {
  const bolt = resolveBolt(context, subgroup, rule.id, rule.edition);
  if (!bolt.ok) return { plan: bare(subgroup), notices: bolt.notices };
  // the flats of a plain bolt are others than those of the assembly that is still to be named
  const unnamed = rule.rule.assemblies !== undefined && subgroup.system === 'plain';
  const hexagon = unnamed ? undefined : hexagonOf(bolt.value, subgroup.system);
  const named = bare(subgroup, bolt.value, hexagon);
  const asked = rule.rule.tighten(bolt.value);
  if (!asked.ok) {
    const placed = asked.notices.map((one) => (subgroup.place ? { ...one, place: subgroup.place } : one));
    return { plan: named, notices: placed };
  }
  const tightening = asked.value;
  const settled = settleSteps(tightening, bolt.value.thread, tools, bolt.value.tested);
  const notices = [
    ...tightening.notices,
    ...settled.notices,
    ...preloadNotices(tightening, settled.steps),
    ...accuracyNotices(context, rule.id, settled.steps),
    ...frictionNotices(tightening),
    ...lengthNotices(bolt.value, rule.rule.reach, hexagon),
    ...figureNotices(subgroup, rule.id, tightening),
  ];
  return {
    plan: {
      ...named,
      tightening: {
        ...tighteningPlan(tightening, bolt.value, settled.steps),
        ...expectation(context, subgroup, tightening, bolt.value, hexagon, settled.steps),
      },
    },
    tightening,
    notices,
  };
}

function tighteningPlan(tightening: Tightening, bolt: BoltUnderRule, steps: readonly StepPlan[]): TighteningPlan {
  const { friction } = tightening;
  const byAngle = tightening.steps.at(-1)?.end.kind === 'mark at angle';
  const mean = byAngle ? undefined : steps.findLast(({ setting }) => setting)?.setting?.preload;
  const yieldPreload = yieldPreloadOf(tightening, bolt);
  return {
    target: tightening.target,
    meaning: tightening.meaning,
    formula: tightening.formula,
    aboveTarget: tightening.aboveTarget,
    steps,
    ...(friction ? { friction: { text: frictionText(friction), source: friction.source } } : {}),
    ...(tightening.controlTorque ? { controlTorque: tightening.controlTorque } : {}),
    ...(tightening.ceiling ? { ceiling: tightening.ceiling } : {}),
    ...(yieldPreload ? { yieldPreload } : {}),
    ...(yieldPreload && mean !== undefined ? { utilisation: { value: mean / yieldPreload.value, estimate: yieldPreload.estimate } } : {}),
  };
}

/** Stress and torsion both grow with the preload, so that the share of yield at one preload tells where it reaches one. */
function yieldPreloadOf({ friction, target }: Tightening, { thread, strength }: BoltUnderRule): TighteningPlan['yieldPreload'] {
  if (!friction || strength.yield === null) return undefined;
  const torsion = shankTorsion(friction, thread, target.value);
  return { value: N(target.value / yieldUtilisation(target.value, torsion.value, thread, strength.yield)), estimate: torsion.estimate };
}

/** What the crew will see the part turn, and how sure the preload is. */
function expectation(
  context: Context,
  subgroup: Subgroup,
  tightening: Tightening,
  bolt: BoltUnderRule,
  hexagon: Hexagon | undefined,
  steps: readonly StepPlan[],
): Pick<TighteningPlan, 'resilience' | 'rotation' | 'contributions' | 'scatter'> {
  const settings = steps.flatMap(({ setting }) => (setting ? [setting] : []));
  const last = settings.at(-1);
  const solid = solidJointOf(bolt, hexagon);
  const resilience = solid ? { resilience: solidResilience(solid) } : {};
  const chart = last && context.toolBySerial.get(last.tool)?.tool.chart;
  if (!chart) return resilience;
  const variation = tightening.friction?.variation ?? (bolt.tested ? TESTED_VARIATION : UNMEASURED_VARIATION);
  const contributions = preloadContributions(last, chart, { variation, tested: bolt.tested });
  const ends = steps.findLast(({ order, end }) => order === 'sequence' && end.kind !== 'firm contact')?.end.kind;
  if (ends !== 'stall') return { ...resilience, contributions };
  return {
    ...resilience,
    contributions,
    ...(solid ? { rotation: rotationOf(solid, settings) } : {}),
    scatter: preloadScatter(tightening, last, contributions, subgroup.positions.length),
  };
}

function solidJointOf({ thread, clampThickness, length }: BoltUnderRule, hexagon: Hexagon | undefined): SolidJoint | undefined {
  const bearingFace = hexagon?.bearingFace ?? hexagon?.washerOuter;
  if (clampThickness === undefined || hexagon?.hole === undefined || bearingFace === undefined) return undefined;
  return { thread, clampThickness, bearingFace, hole: hexagon.hole, ...(length === undefined ? {} : { length }) };
}

function rotationOf(joint: SolidJoint, settings: readonly StepSetting[]): RotationPlan {
  const [lead, last] = [settings.at(-2), settings.at(-1)!];
  return {
    ...expectedRotation(joint, NO_PRELOAD, last.preload),
    ...(lead ? { afterLead: expectedRotation(joint, lead.preload, last.preload) } : {}),
    source: ROTATION_SOURCE,
  };
}

function frictionText(friction: NonNullable<Tightening['friction']>): string {
  const round = (value: number) => String(Math.round(value * 1000) / 1000);
  const scatter = friction.variation === undefined ? '' : `, V = ${round(friction.variation)}`;
  return friction.kind === 'nut factor'
    ? `k = ${round(friction.k)}${scatter}`
    : `μ thread ${round(friction.thread)}, μ bearing ${round(friction.bearing)}${scatter}`;
}

function bare(subgroup: Subgroup, bolt?: BoltUnderRule, hexagon?: Hexagon): SubgroupPlan {
  return {
    id: subgroup.id,
    positions: subgroup.positions,
    size: bolt?.thread.designation ?? subgroup.size,
    grade: bolt?.grade.id ?? subgroup.grade,
    system: subgroup.system,
    turned: subgroup.turned,
    ...(subgroup.length === undefined ? {} : { length: subgroup.length }),
    ...(subgroup.clampThickness === undefined ? {} : { clampThickness: subgroup.clampThickness }),
    ...(subgroup.lot === undefined ? {} : { lot: subgroup.lot }),
    ...(hexagon ? { acrossFlats: turnedFlats(hexagon, subgroup.turned) } : {}),
  };
}

const turnedFlats = (hexagon: Hexagon, turned: 'nut' | 'head') =>
  turned === 'nut' ? (hexagon.nutAcrossFlats ?? hexagon.acrossFlats) : hexagon.acrossFlats;

const PRODUCT: Readonly<Record<AssemblySystem, HexagonProduct>> = { HR: 'HR', HV: 'HV', HRC: 'HR', plain: 'ISO' };

function hexagonOf(bolt: BoltUnderRule, system: AssemblySystem): Hexagon | undefined {
  const found = hexagonFor(bolt.thread, isMetric(bolt.thread) ? PRODUCT[system] : 'heavy-hex');
  return found.ok ? found.value : undefined;
}

function accuracyNotices(context: Context, rule: RuleSetId, steps: readonly StepPlan[]): Notice[] {
  if (rule !== 'en1090-torque' && rule !== 'de-reduced-torque') return [];
  const last = steps.findLast(({ setting }) => setting)?.setting;
  const chart = last ? context.toolBySerial.get(last.tool)?.tool.chart : undefined;
  return chart && chart.repeatability >= METHOD_ACCURACY
    ? [notice('accuracy-used-up', { repeatability: percent(chart.repeatability) })]
    : [];
}

/** A rule set's own tabulated value is the method; a table of nut factors is not a test. */
function frictionNotices({ friction }: Tightening): Notice[] {
  const source = friction?.source;
  if (!source || source.provenance === 'certificate' || source.provenance === 'engineer') return [];
  if (source.standard.startsWith('EN 1090') || source.standard.startsWith('DIN EN 1993')) return [];
  return [notice('friction-from-table', { source: [source.standard, source.edition].filter(Boolean).join(':') })];
}

/** The engineer's figures: whether one stands in place of ours, and which one this rule set has no use for. */
function figureNotices({ given, place }: Subgroup, rule: RuleSetId, { target }: Tightening): Notice[] {
  if (rule === 'as-specified') return given.boltStress === undefined ? [] : [notice('figure-not-used', { what: 'bolt stress' }, place)];
  const notices: Notice[] = [];
  const taken = given.preload !== undefined && target.source.provenance === 'engineer';
  if (taken) notices.push(notice('engineer-override', { what: 'preload' }));
  if (given.preload !== undefined && !taken) notices.push(notice('figure-not-used', { what: 'preload' }, place));
  if (given.torque !== undefined) notices.push(notice('figure-not-used', { what: 'torque' }, place));
  if (given.boltStress !== undefined && (taken || rule !== 'flange-bolt-stress'))
    notices.push(notice('figure-not-used', { what: 'bolt stress' }, place));
  return notices;
}
