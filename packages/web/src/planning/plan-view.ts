import { type JointPlan, type Level, levelOf, type Notice, onlyWaits, type Plan, type SubgroupPlan } from '@clampwright/core';
import { aimText, bigText, fastenerText, finalStep, spoken } from '@clampwright/papers/screen';
import { ENGLISH_WORDS, remedy, says, type UnitSystem, type Words } from '@clampwright/words';
import type { JointRow, PlanView, ToMend } from './view.ts';

/** A plan as pages show it, in the words of its reader. */
export function planView(
  of: Pick<PlanView, 'notices' | 'list' | 'mapping' | 'roundsOpen'> & { readonly plan: Plan | undefined },
  words: Words = ENGLISH_WORDS,
): PlanView {
  const { plan, ...rest } = of;
  const units = plan?.job.units ?? 'metric';
  return {
    ...rest,
    job: plan?.job,
    sums: plan?.sums,
    waiting: plan?.joints.filter(onlyWaits).length ?? 0,
    tools: plan?.tools ?? [],
    rows: plan?.joints.flatMap((joint) => rowsIn(joint, units, words)) ?? [],
    toMend: plan ? toMend(plan, units) : [],
  };
}

/** Rows by the joint they tell of: a joint that did not change is not told again, until somebody reads another language. */
const told = new WeakMap<JointPlan, { readonly words: Words; readonly rows: readonly JointRow[] }>();
function rowsIn(joint: JointPlan, units: UnitSystem, words: Words): readonly JointRow[] {
  const known = told.get(joint);
  if (known?.words === words) return known.rows;
  const rows = rowsOf(joint, units, words);
  told.set(joint, { words, rows });
  return rows;
}

function rowsOf(joint: JointPlan, units: UnitSystem, words: Words): JointRow[] {
  const { tag, title, verdict, interaction } = joint;
  const all = {
    tag,
    title,
    verdict,
    rule: words.term(joint.rule.title),
    reasons: joint.reasons.length,
    ...(interaction ? { rounds: { ours: interaction.rounds.length, custom: interaction.custom.length } } : {}),
  };
  if (joint.subgroups.length === 0)
    return [{ ...all, first: true, bolts: joint.boltCount, fastener: '', lot: '', preload: '', aim: '', setting: '', tool: '' }];
  return joint.subgroups.map((subgroup, at) => ({ ...all, first: at === 0, ...subgroupCells(subgroup, units, words) }));
}

function subgroupCells(
  subgroup: SubgroupPlan,
  units: UnitSystem,
  words: Words,
): Omit<JointRow, 'tag' | 'title' | 'verdict' | 'rule' | 'reasons' | 'first'> {
  const { lot, ...bare } = subgroup;
  const { tightening } = subgroup;
  const last = finalStep(subgroup);
  const tools = new Set(tightening?.steps.flatMap(({ setting }) => setting?.tool ?? []));
  return {
    bolts: subgroup.positions.length,
    fastener: fastenerText(bare, units, words),
    lot: lot ?? '',
    preload: tightening ? spoken(units, words).force(tightening.target.value) : '',
    aim: last ? aimText(last, units, words) : '',
    setting: last ? bigText(last, units, words) : '',
    tool: [...tools].join(', '),
  };
}

/** Reasons of one remedy are one thing to mend: told apart by the English text, shown in the reader's language. */
const texts = new WeakMap<Notice, { readonly key: string; readonly text: string }>();
function textsOf(reason: Notice, units: UnitSystem): { readonly key: string; readonly text: string } {
  const known = texts.get(reason) ?? { key: `${reason.code}/${remedy(reason, units)}`, text: says(reason, units) };
  texts.set(reason, known);
  return known;
}

const RANK: Readonly<Record<Level, number>> = { stop: 0, fault: 0, hold: 1, attention: 2 };

/** Reasons of many joints by their remedy: stops before holds before attention, then what helps most joints. */
function toMend(plan: Plan, units: UnitSystem): ToMend[] {
  const found = new Map<string, { readonly level: Level; readonly notices: Map<string, Notice>; readonly tags: Set<string> }>();
  const add = (reason: Notice, tag?: string) => {
    const level = levelOf(reason.code);
    const { key, text } = textsOf(reason, units);
    const entry = found.get(key) ?? { level, notices: new Map<string, Notice>(), tags: new Set<string>() };
    entry.notices.set(text, reason);
    if (tag !== undefined) entry.tags.add(tag);
    found.set(key, entry);
  };
  for (const reason of plan.reasons) add(reason);
  for (const { tag, reasons } of plan.joints) for (const reason of reasons) add(reason, tag);
  return [...found]
    .map(([key, { level, notices, tags }]) => ({ key, level, notices: [...notices.values()], tags: [...tags] }))
    .sort((a, b) => RANK[a.level] - RANK[b.level] || b.tags.length - a.tags.length);
}
