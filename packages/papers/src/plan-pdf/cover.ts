import type { JointPlan, Plan, SubgroupPlan, Verdict } from '@clampwright/core';
import { dayLines, type Words } from '@clampwright/words';
import { aimText, finalStep } from '../page/final-step.ts';
import { spoken } from '../page/spoken.ts';
import type { Ink } from '../pdf/ink.ts';
import { groupRemedies } from '../told/group-remedies.ts';
import {
  type Flow,
  facts,
  heading,
  letterhead,
  type Organisation,
  paragraph,
  said,
  signatureLines,
  table,
  tallies,
} from '../typeset/index.ts';

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
  flow.section(flow.languages[0].label('page.plan'), 1);
  paragraph(flow, said('page.plan'), { size: 10, ink: 'quiet', after: 0.5 });
  heading(flow, job.title, 1);
  facts(flow, [
    [said('job.site'), job.site],
    [said('job.date'), job.workDate],
    ...(job.people.length > 0 ? ([[said('job.people'), job.people.map(({ name, role }) => `${name} (${role})`).join(', ')]] as const) : []),
  ]);
  tallies(
    flow,
    VERDICTS.map((verdict) => ({
      count: sums[verdict],
      name: said(`verdict-word.${verdict}`),
      text: said(`verdict.${verdict}`),
      ink: verdict,
    })),
  );
  paragraph(flow, said('job.sums', { joints: sums.joints, bolts: sums.bolts }), { ink: 'quiet', size: 8.5 });
  fixFirst(flow, plan);
  heading(flow, said('joints.title'), 2);
  jointTable(flow, plan);
  heading(flow, said('sums.title'), 2);
  for (const at of dayLines(plan).keys()) paragraph(flow, (words) => dayLines(plan, words)[at]!, { after: 0.8 });
  heading(flow, said('tools.title'), 2);
  table(
    flow,
    [
      { head: said('col.tool'), width: 4, cell: ({ serial, name }) => `${serial}\n${name}` },
      { head: said('col.certificate'), width: 3, cell: ({ certificate }) => certificate },
      { head: said('col.due'), width: 2, cell: ({ due }) => due },
      {
        head: said('col.notes'),
        width: 6,
        cell:
          ({ notices }) =>
          (words) =>
            notices.map((one) => `${words.says(one, job.units)} ${words.remedy(one, job.units)}`).join('\n') || words.label('tools.fine'),
      },
    ],
    plan.tools,
  );
  paragraph(flow, said('paper.no-engineer'), { ink: 'quiet', size: 8.5 });
  signatureLines(flow, [said('paper.prepared'), said('paper.reviewed'), said('paper.released')]);
}

function fixFirst(flow: Flow, { joints, reasons, job }: Plan): void {
  const things = groupRemedies(joints, reasons, job.units, flow.languages[0]);
  heading(flow, said('fix.title'), 2);
  if (things.length === 0) {
    paragraph(flow, said('fix.none'));
    return;
  }
  table(
    flow,
    [
      { head: '', width: 2.2, cell: ({ level }) => ({ text: said(`level.${level}`), face: 'bold', ink: inkOf(level) }) },
      { head: said('joint.remedy'), width: 6, cell: (one) => one.remedy },
      { head: said('joint.reasons'), width: 6, cell: (one) => ({ text: one.says.slice(0, 4).join('\n'), ink: 'quiet' }) },
      { head: said('col.joint'), width: 2.6, cell: ({ tags }) => tags.join(', ') || said('fix.whole-job') },
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
  const say = spoken(units, flow.languages[0]);
  table(
    flow,
    [
      { head: said('col.joint'), width: 3.8, cell: ({ joint, first }) => (first ? `${joint.tag}\n${joint.title}` : '') },
      {
        head: said('col.verdict'),
        width: 2,
        cell: ({ joint, first }) => (first ? { text: said(`verdict-word.${joint.verdict}`), face: 'bold', ink: joint.verdict } : ''),
      },
      {
        head: said('col.bolts'),
        width: 2.3,
        cell: ({ joint, subgroup }) =>
          subgroup ? `${subgroup.positions.length} × ${subgroup.size}\n${subgroup.grade}` : String(joint.boltCount),
      },
      { head: said('col.rule'), width: 3.5, cell: ({ joint, first }) => (first ? ({ term }) => term(joint.rule.title) : '') },
      {
        head: said('col.preload'),
        width: 2.5,
        align: 'right',
        cell: ({ subgroup }) => (subgroup?.tightening ? say.force(subgroup.tightening.target.value) : ''),
      },
      {
        head: said('col.final'),
        width: 2.1,
        align: 'right',
        cell: (row) => ((step) => (step ? (words: Words) => aimText(step, units, words) : ''))(last(row)),
      },
      {
        head: said('col.setting'),
        width: 2.9,
        cell: (row) => ((step) => (step ? { text: (words: Words) => words.setting(step), face: 'bold' as const } : ''))(last(row)),
      },
    ],
    rows,
    { size: 7.5 },
  );
}
