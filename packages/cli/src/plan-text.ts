import {
  type InteractionPlan,
  type JointPlan,
  levelOf,
  type Notice,
  type Plan,
  type RoundPlan,
  type SubgroupPlan,
} from '@clampwright/core';
import {
  dayLines,
  endText,
  fewTags,
  label,
  remedy,
  say,
  says,
  settingLine,
  stepText,
  type UnitSystem,
  verdictText,
  whereabouts,
} from '@clampwright/words';
import { textTable } from './text-table.ts';

/** The plan as people like to read it in a terminal: what to fix first, then every joint with its last setting. */
export function planText(plan: Plan, faults: readonly Notice[]): string {
  const { units } = plan.job;
  const { sums } = plan;
  const parts = [
    `${plan.job.title} · ${plan.job.site} · ${plan.job.workDate}`,
    `${sums.joints} joints, ${sums.bolts} bolts: ${sums.ready} ready, ${sums.attention} attention, ${sums.stop} stop`,
  ];
  const read = faults.filter(({ code }) => levelOf(code) !== 'attention');
  if (faults.length > 0)
    parts.push(`Read with ${read.length} fault(s) and ${faults.length - read.length} remark(s)\n${faultsText(faults, units)}`);
  parts.push(
    textTable(
      ['', 'joint', 'bolts', 'rule set', 'size', 'preload', 'step', 'setting', 'torque', 'tool'],
      plan.joints.flatMap((joint) => jointRows(joint, units)),
    ),
  );
  const rounds = plan.joints.flatMap((joint) => (joint.interaction ? [roundsLine(joint.tag, joint.interaction)] : []));
  if (rounds.length > 0) parts.push(`Rounds where bolts act on each other\n${rounds.join('\n')}`);
  parts.push(
    `${label('sums.title')}\n${dayLines(plan)
      .map((line) => `  ${line}`)
      .join('\n')}`,
  );
  const first = fixFirst(plan, units);
  if (first !== '') parts.push(`Fix first\n${first}`);
  return `${parts.join('\n\n')}\n`;
}

export const faultsText = (notices: readonly Notice[], units: UnitSystem): string =>
  notices.map((one) => `  ${[whereabouts(one), says(one, units)].filter(Boolean).join(': ')}\n      → ${remedy(one, units)}`).join('\n');

const MARK: Readonly<Record<JointPlan['verdict'], string>> = { ready: '●', attention: '▲', stop: '■' };

function jointRows(joint: JointPlan, units: UnitSystem): string[][] {
  const head = [`${MARK[joint.verdict]} ${verdictText(joint.verdict)}`, joint.tag, String(joint.boltCount), joint.rule.id];
  if (joint.subgroups.length === 0) return [[...head, '', '', '', '', '', '']];
  return joint.subgroups.map((subgroup, at) => [
    ...(at === 0 ? head : ['', '', `  ${subgroup.positions.length}`, '']),
    ...subgroupCells(subgroup, units),
  ]);
}

function subgroupCells(subgroup: SubgroupPlan, units: UnitSystem): string[] {
  const size = `${subgroup.size} ${subgroup.grade}`;
  const { tightening } = subgroup;
  const last = tightening?.steps.findLast(({ name }) => name !== 're-check' && name !== 'circular round');
  if (!tightening || !last) return [size, '', '', '', '', ''];
  const torque = last.setting?.torque ?? last.torque?.wanted;
  return [
    size,
    say({ dimension: 'force', value: tightening.target.value }, units),
    stepText(last.name),
    last.end.kind === 'mark at angle' ? endText(last.end, units) : settingLine(last),
    torque === undefined ? '' : say({ dimension: 'torque', value: torque }, units),
    last.setting?.tool ?? '',
  ];
}

function roundsLine(tag: string, { rounds, custom, mode }: InteractionPlan): string {
  const worst = ({ worst: share }: RoundPlan) => say({ dimension: 'percent', value: share });
  const minutes = rounds.reduce((sum, round) => sum + round.minutes, 0);
  const planned = `${rounds.length} with ${mode.replace(' a round', ' each')}, ${minutes.toFixed(0)} min, worst bolt ${worst(rounds.at(-1)!)} off`;
  return `  ${tag}: ${planned} (by custom: ${custom.length}, ${worst(custom.at(-1)!)} off)`;
}

/** One line for each thing to mend, with the joints it would free; stops before holds before attention. */
function fixFirst(plan: Plan, units: UnitSystem): string {
  const lines = new Map<string, { readonly notice: Notice; readonly tags: string[] }>();
  for (const { tag, reasons } of plan.joints) {
    for (const reason of reasons) {
      const key = `${says(reason, units)}${remedy(reason, units)}`;
      const known = lines.get(key);
      if (known) known.tags.push(tag);
      else lines.set(key, { notice: reason, tags: [tag] });
    }
  }
  const rank = { stop: 0, fault: 0, hold: 1, attention: 2 } as const;
  return [...lines.values()]
    .sort((a, b) => rank[levelOf(a.notice.code)] - rank[levelOf(b.notice.code)])
    .map(
      ({ notice, tags }) =>
        `  ${levelOf(notice.code).padEnd(9)}  ${fewTags(tags)}: ${says(notice, units)}\n             → ${remedy(notice, units)}`,
    )
    .join('\n');
}
