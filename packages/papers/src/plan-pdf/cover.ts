import type { JointPlan, Plan, SubgroupPlan, Verdict } from '@clampwright/core';
import { dayLines, label, levelText, remedy, says, settingLine, verdictText } from '@clampwright/words';
import { aimText, finalStep } from '../page/final-step.ts';
import { spoken } from '../page/spoken.ts';
import type { Ink } from '../pdf/ink.ts';
import { groupRemedies } from '../told/group-remedies.ts';
import { type Flow, facts, heading, letterhead, type Organisation, paragraph, signatureLines, table, tallies } from '../typeset/index.ts';

const VERDICTS: readonly Verdict[] = ['stop', 'attention', 'ready'];

interface Row {
  readonly joint: JointPlan;
  readonly subgroup: SubgroupPlan | undefined;
  readonly first: boolean;
}

/** First pages of the plan: what it is, what to mend first, every joint on a line or two, the tools. */
export function planCover(flow: Flow, plan: Plan, organisation: Organisation | undefined): void {
  const { job, sums } = plan;
  flow.move(letterhead(flow.canvas, flow.sheet, organisation) + 4);
  flow.section(label('page.plan'), 1);
  paragraph(flow, label('page.plan'), { size: 10, ink: 'quiet', after: 0.5 });
  heading(flow, job.title, 1);
  facts(flow, [
    [label('job.site'), job.site],
    [label('job.date'), job.workDate],
    ...(job.people.length > 0
      ? ([[label('job.people'), job.people.map(({ name, role }) => `${name} (${role})`).join(', ')]] as const)
      : []),
  ]);
  tallies(
    flow,
    VERDICTS.map((verdict) => ({ count: sums[verdict], name: verdictText(verdict), text: label(`verdict.${verdict}`), ink: verdict })),
  );
  paragraph(flow, label('job.sums', { joints: sums.joints, bolts: sums.bolts }), { ink: 'quiet', size: 8.5 });
  fixFirst(flow, plan);
  heading(flow, label('joints.title'), 2);
  jointTable(flow, plan);
  heading(flow, label('sums.title'), 2);
  for (const line of dayLines(plan)) paragraph(flow, line, { after: 0.8 });
  heading(flow, label('tools.title'), 2);
  table(
    flow,
    [
      { head: label('col.tool'), width: 4, cell: ({ serial, name }) => `${serial}\n${name}` },
      { head: label('col.certificate'), width: 3, cell: ({ certificate }) => certificate },
      { head: label('col.due'), width: 2, cell: ({ due }) => due },
      {
        head: label('col.notes'),
        width: 6,
        cell: ({ notices }) => notices.map((one) => `${says(one, job.units)} ${remedy(one, job.units)}`).join('\n') || label('tools.fine'),
      },
    ],
    plan.tools,
  );
  paragraph(flow, label('paper.no-engineer'), { ink: 'quiet', size: 8.5 });
  signatureLines(flow, [label('paper.prepared'), label('paper.reviewed'), label('paper.released')]);
}

function fixFirst(flow: Flow, { joints, reasons, job }: Plan): void {
  const things = groupRemedies(joints, reasons, job.units);
  heading(flow, label('fix.title'), 2);
  if (things.length === 0) {
    paragraph(flow, label('fix.none'));
    return;
  }
  table(
    flow,
    [
      { head: '', width: 2.2, cell: ({ level }) => ({ text: levelText(level), face: 'bold', ink: inkOf(level) }) },
      { head: label('joint.remedy'), width: 6, cell: (one) => one.remedy },
      { head: label('joint.reasons'), width: 6, cell: (one) => ({ text: one.says.slice(0, 4).join('\n'), ink: 'quiet' }) },
      { head: label('col.joint'), width: 2.6, cell: ({ tags }) => tags.join(', ') || label('fix.whole-job') },
    ],
    things,
    { size: 7.5 },
  );
}

const inkOf = (level: string): Ink => (level === 'stop' || level === 'fault' ? 'stop' : 'attention');

function jointTable(flow: Flow, { joints, job: { units } }: Plan): void {
  const rows = VERDICTS.flatMap((verdict) => joints.filter((one) => one.verdict === verdict)).flatMap((joint): Row[] =>
    joint.subgroups.length === 0
      ? [{ joint, subgroup: undefined, first: true }]
      : joint.subgroups.map((subgroup, at) => ({ joint, subgroup, first: at === 0 })),
  );
  const last = ({ subgroup }: Row) => subgroup && finalStep(subgroup);
  const say = spoken(units);
  table(
    flow,
    [
      { head: label('col.joint'), width: 3.8, cell: ({ joint, first }) => (first ? `${joint.tag}\n${joint.title}` : '') },
      {
        head: label('col.verdict'),
        width: 2,
        cell: ({ joint, first }) => (first ? { text: verdictText(joint.verdict), face: 'bold', ink: joint.verdict } : ''),
      },
      {
        head: label('col.bolts'),
        width: 2.6,
        cell: ({ joint, subgroup }) =>
          subgroup ? `${subgroup.positions.length} × ${subgroup.size}\n${subgroup.grade}` : String(joint.boltCount),
      },
      { head: label('col.rule'), width: 3.2, cell: ({ joint, first }) => (first ? joint.rule.title : '') },
      {
        head: label('col.preload'),
        width: 1.8,
        align: 'right',
        cell: ({ subgroup }) => (subgroup?.tightening ? say.force(subgroup.tightening.target.value) : ''),
      },
      { head: label('col.final'), width: 2.1, align: 'right', cell: (row) => ((step) => (step ? aimText(step, units) : ''))(last(row)) },
      {
        head: label('col.setting'),
        width: 2.9,
        cell: (row) => ((step) => (step ? { text: settingLine(step), face: 'bold' } : ''))(last(row)),
      },
    ],
    rows,
    { size: 7.5 },
  );
}
