import { assemblyChecks, type RequiredCheck } from '../assembly/checks.ts';
import { boltCountOf, type Joint } from '../job/job.ts';
import { levelOf, type Notice, notice } from '../notice/index.ts';
import type { Level } from '../notice/level.ts';
import type { CautionCode } from '../rules/caution.ts';
import { findRuleSet, type RuleSetId } from '../rules/index.ts';
import type { Context, ReadyTool } from './context.ts';
import { inspectionPlan } from './inspection-plan.ts';
import { kitOf } from './kit.ts';
import { permitNotices } from './permit-notices.ts';
import type { JointPlan, Permits, Verdict } from './plan.ts';
import { planSubgroup } from './plan-subgroup.ts';
import { positionNotices } from './positions.ts';
import { pushNotices } from './push-notices.ts';
import { reachNotices } from './reach-notices.ts';
import { sequenceOf } from './sequence-of.ts';
import { unique } from './step-settings.ts';
import { workPlan } from './work-plan.ts';

/** Shown first: what stops, what holds, what must be read. */
const RANK: Readonly<Record<Level, number>> = { stop: 0, fault: 0, hold: 1, attention: 2 };

/** One joint: verdict with every reason, and all that its card needs. */
export function planJoint(context: Context, joint: Joint): JointPlan {
  const notices: Notice[] = [...positionNotices(joint)];
  const rule = findRuleSet(joint.rule, joint.edition);
  if (!rule.ok) notices.push(...rule.notices.map((one) => (joint.place ? { ...one, place: joint.place } : one)));
  const { tools, notices: toolNotices } = toolsFor(context, joint);
  notices.push(...toolNotices);
  const planned = rule.ok ? joint.subgroups.map((subgroup) => planSubgroup(context, subgroup, rule.value, tools)) : [];
  for (const one of planned) {
    notices.push(...one.notices, ...reachNotices(context, joint, one.plan.acrossFlats, one.plan.tightening?.steps ?? []));
  }
  const { sequence, notices: sequenceNotices } = sequenceOf(joint);
  const steps = planned.flatMap(({ plan }) => plan.tightening?.steps ?? []);
  notices.push(...sequenceNotices, ...permitNotices(context, joint, steps), ...pushNotices(context, steps));
  // where the tools named are unknown, that is the reason, and not that the job has none
  const said = joint.tools.length === 0 ? notices : notices.filter(({ code }) => code !== 'no-tool');
  const reasons = unique(said).sort((a, b) => RANK[levelOf(a.code)] - RANK[levelOf(b.code)]);
  const subgroups = planned.map(({ plan }) => plan);
  const work = workPlan(context, subgroups);
  return {
    tag: joint.tag,
    title: joint.title,
    verdict: verdictOf(reasons),
    reasons,
    rule: rule.ok
      ? { id: rule.value.id, title: rule.value.rule.title, edition: rule.value.edition, stepWord: rule.value.rule.stepWord }
      : { id: joint.rule, title: joint.rule, edition: joint.edition ?? '', stepWord: 'step' },
    layout: joint.layout,
    boltCount: boltCountOf(joint.layout),
    subgroups,
    sequence,
    ...(work ? { work } : {}),
    checks: rule.ok ? checksOf(joint, rule.value.id) : [],
    ...(rule.ok ? { inspection: inspectionPlan(rule.value.id, boltCountOf(joint.layout), context.job.executionClass) } : {}),
    permits: permitsOf(context, joint),
    kit: kitOf(subgroups, joint.pressure),
    cautions: cautionsOf(
      context,
      joint,
      planned.flatMap(({ tightening }) => tightening?.cautions ?? []),
    ),
    ...(joint.flange === undefined ? {} : { flange: joint.flange }),
    ...(joint.datum ? { datum: joint.datum } : {}),
    ...(joint.access.reactionPoint === undefined ? {} : { reactionPoint: joint.access.reactionPoint }),
  };
}

function checksOf(joint: Joint, rule: RuleSetId): RequiredCheck[] {
  const [first] = joint.subgroups;
  return assemblyChecks({
    rule,
    system: first?.system ?? 'plain',
    slopedFaces: Math.max(0, ...joint.subgroups.map(({ slopedFaces }) => slopedFaces)) as 0 | 1 | 2,
    gasket: joint.flange !== undefined || rule === 'flange-bolt-stress',
  });
}

/** Anything that stops or waits stops the joint; a paper that is missing is as good a reason as a bolt that would break. */
const verdictOf = (reasons: readonly Notice[]): Verdict => {
  const levels = reasons.map(({ code }) => levelOf(code));
  if (levels.some((level) => level !== 'attention')) return 'stop';
  return levels.length > 0 ? 'attention' : 'ready';
};

/** The tools meant for a joint, or all of the job's. A tool that nobody named and that may not be used is passed over in silence. */
function toolsFor(context: Context, joint: Joint): { readonly tools: readonly ReadyTool[]; readonly notices: readonly Notice[] } {
  if (joint.tools.length === 0) return { tools: context.tools, notices: [] };
  const notices: Notice[] = [];
  const tools: ReadyTool[] = [];
  for (const serial of joint.tools) {
    const ready = context.toolBySerial.get(serial);
    if (!ready) notices.push(notice('tool-unknown', { serial }, joint.place));
    else {
      tools.push(ready);
      notices.push(...ready.notices.filter(({ code }) => levelOf(code) === 'attention'));
    }
  }
  return { tools, notices };
}

function permitsOf(context: Context, joint: Joint): Permits {
  const zone = joint.zone ?? context.job.conditions.zone;
  return {
    pressure: joint.pressure,
    ...(joint.permit === undefined ? {} : { permit: joint.permit }),
    ...(zone === undefined ? {} : { zone }),
    ...(joint.hotWorkPermit === undefined ? {} : { hotWorkPermit: joint.hotWorkPermit }),
    ...(joint.gasTest === undefined ? {} : { gasTest: joint.gasTest }),
  };
}

/** The usual cautions of work with a reaction arm, then those of method, place and permit; each once. */
function cautionsOf(context: Context, joint: Joint, ofMethod: readonly CautionCode[]): CautionCode[] {
  const zone = joint.zone ?? context.job.conditions.zone;
  return [
    ...new Set<CautionCode>([
      'arm-against-point',
      'hands-off-arm',
      'never-lengthen-arm',
      'hold-the-other-part',
      'one-pull-per-bolt',
      'cut-out-is-not-a-stall',
      'arm-comes-free',
      'direction-locked',
      ...ofMethod,
      ...(joint.pressure ? (['pressure-isolated'] as const) : []),
      ...(context.job.conditions.atHeight ? (['tether-at-height'] as const) : []),
      ...(zone !== undefined && zone !== 'none' ? (['hazardous-area'] as const) : []),
      'wet-means-retest',
    ]),
  ];
}
