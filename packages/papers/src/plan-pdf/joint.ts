import { type JointPlan, levelOf, type SubgroupPlan } from '@clampwright/core';
import {
  cautionText,
  datumText,
  endText,
  label,
  levelText,
  patternText,
  remedy,
  says,
  settingLine,
  stepText,
  type UnitSystem,
  verdictText,
} from '@clampwright/words';
import { jointDrawing } from '../drawing/index.ts';
import { fastenerText, handlingText } from '../page/bolt-line.ts';
import { positionsText, spoken } from '../page/spoken.ts';
import { inspectionFacts, workFacts } from '../told/around-facts.ts';
import type { ToldFact } from '../told/fact.ts';
import { permitFacts } from '../told/permit-facts.ts';
import { preloadFacts } from '../told/preload-facts.ts';
import { callout, type FactGroup, type Flow, factPair, facts, figure, heading, list, paragraph, table } from '../typeset/index.ts';

const DRAWING = { width: 172, most: 74 } as const;
const PER_ROW = 10;

/** All that is known of one joint, from the top of a page. */
export function planJointPages(flow: Flow, joint: JointPlan, units: UnitSystem): void {
  flow.turn();
  flow.section(`${joint.tag} ${joint.title}`, 2);
  heading(flow, joint.tag, 1, { second: joint.title });
  const { title, edition } = joint.rule;
  paragraph(
    flow,
    [`${title}${edition === '' ? '' : ` (${edition})`}`, joint.flange && label('joint.flange', { flange: joint.flange })]
      .filter(Boolean)
      .join(' · '),
  );
  callout(flow, verdictText(joint.verdict), label(`verdict.${joint.verdict}`), joint.verdict);
  for (const reason of joint.reasons) {
    const level = levelOf(reason.code);
    paragraph(flow, `${levelText(level)}: ${says(reason, units)}`, { face: 'bold', size: 8.5, after: 0.2 });
    paragraph(flow, `${label('joint.remedy')}: ${remedy(reason, units)}`, { size: 8.5 });
  }
  for (const subgroup of joint.subgroups) subgroupPart(flow, joint, subgroup, units);
  const group = (title: string, told: readonly ToldFact[]): FactGroup => ({ title, pairs: pairsOf(told) });
  const { work, inspection } = joint;
  factPair(flow, [
    group(label('joint.permits'), [...permitFacts(joint), ...(inspection ? inspectionFacts(inspection) : [])]),
    group(work ? label('work.title') : '', work ? workFacts(work) : []),
  ]);
  if (inspection && !inspection.torqueProves) paragraph(flow, label('inspection.no-torque'), { size: 8.5 });
  heading(flow, label('joint.cautions'), 2, { keep: 10 });
  list(flow, joint.cautions.map(cautionText), { size: 8 });
  sequencePart(flow, joint);
}

/** Without their sources, which stand in the annex. */
const pairsOf = (told: readonly ToldFact[]) =>
  told.map(({ name, leading, text }) => [name, [leading, text].filter((one) => one !== undefined).join(' ')] as const);

function subgroupPart(flow: Flow, joint: JointPlan, subgroup: SubgroupPlan, units: UnitSystem): void {
  const which = joint.subgroups.length > 1 ? `${label('joint.bolts', { positions: positionsText(subgroup.positions) })}: ` : '';
  heading(flow, `${which}${subgroup.positions.length} × ${fastenerText(subgroup, units)}`, 2);
  paragraph(flow, handlingText(subgroup, units), { ink: 'quiet', size: 8.5 });
  const { tightening } = subgroup;
  if (!tightening) {
    paragraph(flow, label('joint.no-value'));
    return;
  }
  const say = spoken(units);
  table(
    flow,
    [
      { head: label('col.step'), width: 3, cell: ({ name, order }) => `${stepText(name)}\n${label(`step.${order}`)}` },
      {
        head: label('col.setting'),
        width: 3.2,
        cell: (step) => ({
          text: step.end.kind === 'mark at angle' ? `${say.angle(step.end.angle)}, ${settingLine(step)}` : settingLine(step),
          face: 'bold',
        }),
      },
      { head: label('col.tool'), width: 1.8, cell: ({ setting }) => setting?.tool ?? '' },
      {
        head: label('col.torque'),
        width: 3,
        cell: ({ torque, setting }) =>
          torque
            ? `${say.torque(setting?.torque ?? torque.wanted)}\n${label('step.window', { low: say.torque(torque.low), high: say.torque(torque.high) })}`
            : '',
      },
      { head: label('col.end'), width: 3.6, cell: (step) => endText(step.end, units) },
      {
        head: label('col.reaction'),
        width: 1.8,
        align: 'right',
        cell: ({ setting }) => (setting?.reaction === undefined ? '' : say.force(setting.reaction)),
      },
    ],
    tightening.steps,
  );
  facts(flow, pairsOf(preloadFacts(tightening, units)), { size: 8.5, nameWidth: 46 });
}

function sequencePart(flow: Flow, joint: JointPlan): void {
  const { list, pattern } = joint.sequence;
  const drawing = jointDrawing(joint, DRAWING.width, DRAWING.most, 'right');
  heading(flow, label('joint.sequence'), 2, { keep: drawing.height + 8 });
  paragraph(flow, datumText(joint.datum));
  figure(flow, drawing);
  if (list.length === 0) {
    paragraph(flow, label('sequence.none'));
    return;
  }
  heading(flow, `${label('sequence.list')}: ${patternText(pattern)}`, 3);
  if (list.some((bolts) => bolts.length > 1)) paragraph(flow, label('sequence.together'), { ink: 'quiet', size: 8.5 });
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
        cell: ({ from, turns }) => ({ text: label('sequence.row', { from: from + 1, to: from + turns.length }), ink: 'quiet' }),
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
