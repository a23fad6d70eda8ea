import type { JointPlan, Plan, SubgroupPlan } from '@clampwright/core';
import { label, settingLine } from '@clampwright/words';
import { DataTable } from './data-table.tsx';
import { aimText, finalStep } from './final-step.ts';
import type { Links } from './links.ts';
import { SettingText } from './setting-text.tsx';
import { positionsText, spoken } from './spoken.ts';
import { Verdict } from './verdict.tsx';

interface Row {
  readonly joint: JointPlan;
  /** absent where nothing could be planned */
  readonly subgroup: SubgroupPlan | undefined;
  readonly first: boolean;
}

/** One line for each joint, one more for each further subgroup. */
export function JointTable({ plan, joints, links }: { readonly plan: Plan; readonly joints: readonly JointPlan[]; readonly links: Links }) {
  const { units } = plan.job;
  const say = spoken(units);
  const rows = joints.flatMap((joint): Row[] =>
    joint.subgroups.length === 0
      ? [{ joint, subgroup: undefined, first: true }]
      : joint.subgroups.map((subgroup, at) => ({ joint, subgroup, first: at === 0 })),
  );
  const last = ({ subgroup }: Row) => subgroup && finalStep(subgroup);
  return (
    <DataTable
      label={label('joints.title')}
      className="joints"
      rows={rows}
      keyOf={({ joint, subgroup }) => `${joint.tag}\n${subgroup?.id ?? ''}`}
      columns={[
        {
          head: label('col.joint'),
          cell: ({ joint, first }) => (
            <>
              <a href={links.joint(joint.tag)}>{joint.tag}</a>
              {first && <span className="title">{joint.title}</span>}
            </>
          ),
        },
        { head: label('col.verdict'), cell: ({ joint, first }) => first && <Verdict verdict={joint.verdict} /> },
        {
          head: label('col.bolts'),
          cell: ({ joint, subgroup }) =>
            subgroup ? (
              <>
                <span className="whole">
                  {subgroup.positions.length} × {subgroup.size}
                </span>
                <span className="minor">
                  {subgroup.grade}
                  {joint.subgroups.length > 1 && `, ${label('joint.bolts', { positions: positionsText(subgroup.positions) })}`}
                </span>
              </>
            ) : (
              joint.boltCount
            ),
        },
        { head: label('col.rule'), cell: ({ joint, first }) => first && joint.rule.title },
        {
          head: label('col.preload'),
          figures: true,
          cell: ({ subgroup }) => subgroup?.tightening && say.force(subgroup.tightening.target.value),
        },
        { head: label('col.final'), figures: true, cell: (row) => ((step) => step && aimText(step, units))(last(row)) },
        {
          head: label('col.setting'),
          cell: (row) =>
            ((step) =>
              step && (
                <span className="setting">
                  <SettingText text={settingLine(step)} />
                </span>
              ))(last(row)),
        },
        { head: label('col.tool'), cell: ({ subgroup }) => toolsOf(subgroup).join(', ') },
      ]}
    />
  );
}

const toolsOf = (subgroup: SubgroupPlan | undefined) => [
  ...new Set(subgroup?.tightening?.steps.flatMap(({ setting }) => (setting ? [setting.tool] : []))),
];
