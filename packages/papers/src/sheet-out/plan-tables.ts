import type { JointPlan, Plan, StepPlan, SubgroupPlan, ToolState } from '@clampwright/core';
import { endText, label, remedy, says, settingLine, stepText, turnedText, verdictText } from '@clampwright/words';
import { positionsText } from '../page/spoken.ts';
import { kitRows } from '../told/kit-rows.ts';
import { type SheetColumn, type SheetTable, sheetTable } from './sheet-table.ts';
import { unitsOut } from './units-out.ts';

interface Row {
  readonly joint: JointPlan;
  readonly subgroup: SubgroupPlan;
}

/** The plan as tables: joints with their bolts, every step with its setting, the tightening order, tools, kit. */
export function planTables(plan: Plan): SheetTable[] {
  const { units } = plan.job;
  const { force, torque, length, angle } = unitsOut(units);
  const rows = plan.joints.flatMap((joint) => joint.subgroups.map((subgroup): Row => ({ joint, subgroup })));
  const whose: SheetColumn<Row>[] = [
    { head: label('col.joint'), kind: 'text', value: ({ joint }) => joint.tag },
    { head: label('sheet.positions'), kind: 'text', value: ({ subgroup }) => positionsText(subgroup.positions) },
  ];
  const of = (name: string, unit: string) => `${name} [${unit}]`;
  const steps = rows.flatMap((row) => (row.subgroup.tightening?.steps ?? []).map((step, at) => ({ ...row, step, number: at + 1 })));
  type Step = Row & { readonly step: StepPlan; readonly number: number };
  return [
    sheetTable<Row>(
      label('sheet.joints'),
      [
        whose[0]!,
        { head: label('sheet.title'), kind: 'text', value: ({ joint }) => joint.title },
        { head: label('col.verdict'), kind: 'text', value: ({ joint }) => verdictText(joint.verdict) },
        { head: label('col.rule'), kind: 'text', value: ({ joint }) => joint.rule.title },
        whose[1]!,
        { head: label('col.bolts'), kind: 'number', digits: 0, value: ({ subgroup }) => subgroup.positions.length },
        { head: label('sheet.size'), kind: 'text', value: ({ subgroup }) => subgroup.size },
        { head: label('sheet.grade'), kind: 'text', value: ({ subgroup }) => subgroup.grade },
        { head: label('sheet.system'), kind: 'text', value: ({ subgroup }) => subgroup.system },
        {
          head: of(label('sheet.length'), length.unit),
          kind: 'number',
          digits: 1,
          value: ({ subgroup: one }) => one.length && length.of(one.length),
        },
        {
          head: of(label('sheet.clamped'), length.unit),
          kind: 'number',
          digits: 1,
          value: ({ subgroup: one }) => one.clampThickness && length.of(one.clampThickness),
        },
        { head: label('sheet.lot'), kind: 'text', value: ({ subgroup }) => subgroup.lot },
        { head: label('sheet.turned'), kind: 'text', value: ({ subgroup }) => turnedText(subgroup.turned) },
        {
          head: of(label('col.preload'), force.unit),
          kind: 'number',
          digits: 1,
          value: ({ subgroup: { tightening } }) => tightening && force.of(tightening.target.value),
        },
        {
          head: of(label('sheet.control'), torque.unit),
          kind: 'number',
          digits: 1,
          value: ({ subgroup: { tightening } }) => tightening?.controlTorque && torque.of(tightening.controlTorque.value),
        },
        { head: label('preload.formula'), kind: 'text', value: ({ subgroup: { tightening } }) => tightening?.formula },
        {
          head: label('sheet.reasons'),
          kind: 'text',
          value: ({ joint }) => joint.reasons.map((one) => `${says(one, units)} ${remedy(one, units)}`).join(' '),
        },
      ],
      rows,
    ),
    sheetTable<Step>(
      label('sheet.steps'),
      [
        ...whose,
        { head: label('sheet.number'), kind: 'number', digits: 0, value: ({ number }) => number },
        { head: label('col.step'), kind: 'text', value: ({ step }) => stepText(step.name) },
        { head: label('col.tool'), kind: 'text', value: ({ step }) => step.setting?.tool },
        { head: label('col.setting'), kind: 'text', value: ({ step }) => settingLine(step) },
        {
          head: of(label('sheet.chart-torque'), torque.unit),
          kind: 'number',
          digits: 1,
          value: ({ step }) => step.setting && torque.of(step.setting.torque),
        },
        {
          head: of(label('sheet.wanted-torque'), torque.unit),
          kind: 'number',
          digits: 1,
          value: ({ step }) => step.torque && torque.of(step.torque.wanted),
        },
        {
          head: of(label('sheet.angle'), angle.unit),
          kind: 'number',
          digits: 0,
          value: ({ step: { end } }) => (end.kind === 'mark at angle' ? angle.of(end.angle) : undefined),
        },
        {
          head: of(label('sheet.low'), force.unit),
          kind: 'number',
          digits: 1,
          value: ({ step }) => step.setting && force.of(step.setting.preloadLow),
        },
        {
          head: of(label('sheet.mean'), force.unit),
          kind: 'number',
          digits: 1,
          value: ({ step }) => step.setting && force.of(step.setting.preload),
        },
        {
          head: of(label('sheet.high'), force.unit),
          kind: 'number',
          digits: 1,
          value: ({ step }) => step.setting && force.of(step.setting.preloadHigh),
        },
        {
          head: of(label('col.reaction'), force.unit),
          kind: 'number',
          digits: 1,
          value: ({ step }) => step.setting?.reaction && force.of(step.setting.reaction),
        },
        { head: label('col.end'), kind: 'text', value: ({ step }) => endText(step.end, units) },
      ],
      steps,
    ),
    sheetTable(
      label('sheet.order'),
      [
        { head: label('col.joint'), kind: 'text', value: ({ tag }) => tag },
        { head: label('sheet.turn'), kind: 'number', digits: 0, value: ({ turn }) => turn },
        { head: label('report.col.bolt'), kind: 'number', digits: 0, value: ({ bolt }) => bolt },
      ],
      plan.joints.flatMap(({ tag, sequence }) => sequence.list.flatMap((bolts, at) => bolts.map((bolt) => ({ tag, turn: at + 1, bolt })))),
    ),
    sheetTable<ToolState>(
      label('tools.title'),
      [
        { head: label('col.tool'), kind: 'text', value: ({ serial }) => serial },
        { head: label('report.col.name'), kind: 'text', value: ({ name }) => name },
        { head: label('col.certificate'), kind: 'text', value: ({ certificate }) => certificate },
        { head: label('col.due'), kind: 'date', value: ({ due }) => due },
        { head: label('col.notes'), kind: 'text', value: ({ notices }) => notices.map((one) => says(one, units)).join(' ') },
      ],
      plan.tools,
    ),
    sheetTable(
      label('sheet.kit'),
      [
        { head: label('col.joint'), kind: 'text', value: ({ tag }) => tag },
        { head: label('col.count'), kind: 'number', digits: 0, value: ({ count }) => count },
        { head: label('col.item'), kind: 'text', value: ({ name }) => name },
      ],
      plan.joints.flatMap(({ tag, kit }) => kitRows(kit).map((row) => ({ tag, ...row }))),
    ),
  ];
}
