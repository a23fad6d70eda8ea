import { type JointPlan, levelOf, type SubgroupPlan } from '@clampwright/core';
import type { UnitSystem, Words } from '@clampwright/words';
import { jointDrawing } from '../drawing/index.ts';
import { fastenerText, handlingText } from '../page/bolt-line.ts';
import { positionsText, spoken } from '../page/spoken.ts';
import { inspectionFacts, workFacts } from '../told/around-facts.ts';
import { factPairs, type ToldFact } from '../told/fact.ts';
import { permitFacts } from '../told/permit-facts.ts';
import { preloadFacts } from '../told/preload-facts.ts';
import {
  callout,
  type FactGroup,
  type Flow,
  factPair,
  facts,
  figure,
  heading,
  list,
  paragraph,
  said,
  type Text,
  table,
} from '../typeset/index.ts';

const DRAWING = { width: 172, most: 74 } as const;
const PER_ROW = 10;

/** All that is known of one joint, from the top of a page. */
export function planJointPages(flow: Flow, joint: JointPlan, units: UnitSystem): void {
  flow.turn();
  flow.section(`${joint.tag} ${joint.title}`, 2);
  heading(flow, joint.tag, 1, { under: joint.title });
  const { title, edition } = joint.rule;
  paragraph(flow, ({ term, label }) =>
    [`${term(title)}${edition === '' ? '' : ` (${edition})`}`, joint.flange && label('joint.flange', { flange: joint.flange })]
      .filter(Boolean)
      .join(' · '),
  );
  callout(flow, said(`verdict-word.${joint.verdict}`), said(`verdict.${joint.verdict}`), joint.verdict);
  for (const reason of joint.reasons) {
    const level = levelOf(reason.code);
    paragraph(flow, ({ label, says }) => `${label(`level.${level}`)}: ${says(reason, units)}`, { face: 'bold', size: 8.5, after: 0.2 });
    paragraph(flow, ({ label, remedy }) => `${label('joint.remedy')}: ${remedy(reason, units)}`, { size: 8.5 });
  }
  for (const subgroup of joint.subgroups) subgroupPart(flow, joint, subgroup, units);
  const group = (title: Text, make: (words: Words) => readonly ToldFact[]): FactGroup => ({
    title,
    pairs: factPairs(make, flow.languages),
  });
  const { work, inspection } = joint;
  factPair(flow, [
    group(said('joint.permits'), (words) => [...permitFacts(joint, words), ...(inspection ? inspectionFacts(inspection, words) : [])]),
    group(work ? said('work.title') : '', (words) => (work ? workFacts(work, words) : [])),
  ]);
  if (inspection && !inspection.torqueProves) paragraph(flow, said('inspection.no-torque'), { size: 8.5 });
  heading(flow, said('joint.cautions'), 2, { keep: 10 });
  list(
    flow,
    joint.cautions.map(
      (code) =>
        ({ caution }: Words) =>
          caution(code),
    ),
    { size: 8 },
  );
  sequencePart(flow, joint);
}

function subgroupPart(flow: Flow, joint: JointPlan, subgroup: SubgroupPlan, units: UnitSystem): void {
  const which = ({ label }: Words) =>
    joint.subgroups.length > 1 ? `${label('joint.bolts', { positions: positionsText(subgroup.positions) })}: ` : '';
  heading(flow, (words) => `${which(words)}${subgroup.positions.length} × ${fastenerText(subgroup, units, words)}`, 2);
  paragraph(flow, (words) => handlingText(subgroup, units, words), { ink: 'quiet', size: 8.5 });
  const { tightening } = subgroup;
  if (!tightening) {
    paragraph(flow, said('joint.no-value'));
    return;
  }
  const say = spoken(units, flow.languages[0]);
  table(
    flow,
    [
      {
        head: said('col.step'),
        width: 3,
        cell:
          ({ name, order }) =>
          (words) =>
            `${words.step(name)}\n${words.label(`step.${order}`)}`,
      },
      {
        head: said('col.setting'),
        width: 3.2,
        cell: (step) => ({
          text: ({ setting }) => (step.end.kind === 'mark at angle' ? `${say.angle(step.end.angle)}, ${setting(step)}` : setting(step)),
          face: 'bold',
        }),
      },
      { head: said('col.tool'), width: 1.8, cell: ({ setting }) => setting?.tool ?? '' },
      {
        head: said('col.torque'),
        width: 3,
        cell: ({ torque, setting }) =>
          torque
            ? ({ label }) =>
                `${say.torque(setting?.torque ?? torque.wanted)}\n${label('step.window', { low: say.torque(torque.low), high: say.torque(torque.high) })}`
            : '',
      },
      {
        head: said('col.end'),
        width: 3.6,
        cell:
          (step) =>
          ({ end }) =>
            end(step.end, units),
      },
      {
        head: said('col.reaction'),
        width: 1.8,
        align: 'right',
        cell: ({ setting }) => (setting?.reaction === undefined ? '' : say.force(setting.reaction)),
      },
    ],
    tightening.steps,
  );
  facts(
    flow,
    factPairs((words) => preloadFacts(tightening, units, words), flow.languages),
    { size: 8.5, nameWidth: 46 },
  );
}

function sequencePart(flow: Flow, joint: JointPlan): void {
  const { list, pattern } = joint.sequence;
  const drawing = jointDrawing(joint, DRAWING.width, DRAWING.most, 'right', flow.languages);
  heading(flow, said('joint.sequence'), 2, { keep: drawing.height + 8 });
  paragraph(flow, ({ datum }) => datum(joint.datum));
  figure(flow, drawing);
  if (list.length === 0) {
    paragraph(flow, said('sequence.none'));
    return;
  }
  heading(flow, ({ label }) => `${label('sequence.list')}: ${label(`pattern.${pattern}`)}`, 3);
  if (list.some((bolts) => bolts.length > 1)) paragraph(flow, said('sequence.together'), { ink: 'quiet', size: 8.5 });
  const rows = Array.from({ length: Math.ceil(list.length / PER_ROW) }, (_, i) => ({
    from: i * PER_ROW,
    turns: list.slice(i * PER_ROW, (i + 1) * PER_ROW),
  }));
  table(
    flow,
    [
      {
        head: '',
        width: 3,
        cell: ({ from, turns }) => ({ text: said('sequence.row', { from: from + 1, to: from + turns.length }), ink: 'quiet' }),
      },
      ...Array.from({ length: PER_ROW }, (_, i) => ({
        head: '',
        width: 1.3,
        align: 'right' as const,
        cell: ({ turns }: (typeof rows)[number]) => ({ text: turns[i]?.join('+') ?? '', face: 'bold' as const }),
      })),
    ],
    rows,
  );
}
