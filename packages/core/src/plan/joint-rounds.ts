import { settingText } from '../chart/setting-chart.ts';
import type { Job, Joint, Tool } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { force, percent } from '../notice/measure.ts';
import { N } from '../quantity.ts';
import { customSchedule } from '../schedule/custom.ts';
import { oneSettingSchedule } from '../schedule/one-setting.ts';
import type { Level, PlayedPass } from '../schedule/schedule.ts';
import { severalSettingsSchedule } from '../schedule/several-settings.ts';
import type { InteractionPlan } from './interaction-plan.ts';
import type { InteractionTask } from './interaction-task.ts';
import type { JointPlan } from './plan.ts';
import { roundPlan } from './round-plan.ts';

/** Largest |F − target| that is wanted where nobody said otherwise. Common practice, no source. */
const EVENNESS = 0.1;
const SETTINGS_PER_ROUND = 3;
/** Plays to spend on improving a schedule of several settings: under a second for 24 bolts, under five for 120. */
const PLAYS = 3000;
/** The rounds of one joint, and what has to be said about them. */
export interface JointRounds {
  readonly interaction?: InteractionPlan;
  readonly notices: readonly Notice[];
}

/** Rounds that leave a joint even, beside custom on the same joint. */
export function jointRounds(job: Job, joint: Joint, planned: JointPlan, asked: InteractionTask): JointRounds {
  const { task, members, leads, final } = asked;
  const notices: Notice[] = [...(members.gasketAssumed ? [notice('gasket-modulus-assumed', {})] : []), ...gasketNotices(asked)];
  const wanted = joint.evenness ?? EVENNESS;
  const tool = job.tools.find(({ serial }) => serial === final.tool);
  if (!tool) return { notices };
  const all = [...leads, final].map((setting, at): Level => ({ setting: at, force: setting.preload }));
  const [lead, last] = [all.slice(0, -1), all.at(-1)!];
  const custom = customSchedule(task, lead, last, wanted);
  // the rule set's own passes stay; a method of fixed steps is given no rounds of ours
  const one = planned.rule.stepWord === 'pass' ? oneSettingSchedule(task, [all], last, wanted) : custom.slice(0, all.length);
  const text = (level: Level) => [...leads, final][level.setting]!;
  const say = roundPlan(asked, text);
  const spread = custom[lead.length]!.spread;
  const more = one.length - all.length;
  if (spread > wanted && more > 0) {
    notices.push(notice('uneven-by-custom', { spread: percent(spread), rounds: all.length, more, wanted: percent(wanted) }));
  }
  const plain: InteractionPlan = {
    model: members.model,
    target: N(task.target),
    wanted,
    mode: 'one setting a round',
    rounds: one.map(say),
    custom: custom.map(say),
  };
  const ceiling = asked.subgroup.tightening!.ceiling?.value ?? Number.POSITIVE_INFINITY;
  const peak = N(Math.max(...one.map((pass) => pass.peak)));
  if (peak > ceiling) notices.push(notice('peak-above-ceiling', { peak: force(peak), ceiling: force(N(ceiling)) }));
  const several = joint.greatestForce === undefined ? undefined : severalSettings(joint, planned, asked, tool, notices);
  const worst = (several ?? one).at(-1)!.worst;
  if (worst > wanted)
    notices.push(notice('uneven-still', { worst: percent(worst), wanted: percent(wanted), rounds: (several ?? one).length }));
  if (!several) return { interaction: plain, notices };
  const setting = (level: Level) => {
    const { labels, torque } = tool.chart.settings[level.setting]!;
    return { labels, torque, text: settingText(tool.chart, labels) };
  };
  return {
    interaction: {
      ...plain,
      mode: 'several settings a round',
      rounds: several.map(roundPlan(asked, setting)),
      oneSetting: plain.rounds,
    },
    notices,
  };
}

/** The gasket sees the sum of all bolts; evenness comes after that. */
function gasketNotices({ task, members: { gasketWindow } }: InteractionTask): Notice[] {
  const all = N(task.target * task.compliance.size);
  const { least, greatest } = gasketWindow ?? {};
  return [
    ...(greatest !== undefined && all > greatest ? [notice('gasket-load-above', { force: force(all), greatest: force(greatest) })] : []),
    ...(least !== undefined && all < least ? [notice('gasket-load-below', { force: force(all), least: force(least) })] : []),
  ];
}

/** Opt-in, and only where rule set and engineer let a bolt stand above its target for a while. */
function severalSettings(
  joint: Joint,
  planned: JointPlan,
  asked: InteractionTask,
  tool: Tool,
  notices: Notice[],
): PlayedPass[] | undefined {
  const { aboveTarget } = asked.subgroup.tightening!;
  if (aboveTarget.allowed === false) {
    notices.push(notice('above-target-refused', { rule: planned.rule.title }));
    return undefined;
  }
  const arm = asked.final.torque / asked.final.preload;
  const ceiling = asked.subgroup.tightening!.ceiling?.value ?? Number.POSITIVE_INFINITY;
  // near a bolt that stands above the others the gasket carries that much more, too
  const crushed = (asked.members.gasketWindow?.greatest ?? Number.POSITIVE_INFINITY) / asked.task.compliance.size;
  const cap = Math.min(joint.greatestForce!, ceiling, crushed);
  const levels = tool.chart.settings
    .map(({ torque, looseningOnly }, setting) => ({ setting, force: torque / arm, looseningOnly }))
    .filter(({ looseningOnly }) => !looseningOnly)
    .map(({ setting, force: of }): Level => ({ setting, force: of }))
    .sort((a, b) => a.force - b.force);
  const passes = severalSettingsSchedule(asked.task, { levels, cap, settingsPerPass: SETTINGS_PER_ROUND, plays: PLAYS });
  const peak = Math.max(0, ...passes.map((pass) => pass.peak));
  if (passes.length === 0 || peak > cap * (1 + 1e-9)) {
    notices.push(notice('several-settings-none', { cap: force(N(cap)) }));
    return undefined;
  }
  notices.push(notice('above-target-approval', { peak: force(N(peak)), target: force(N(asked.task.target)) }));
  return passes;
}
