import type { JointPlan, Plan } from '@clampwright/core';
import { datumText, label, patternText, settingLine, verdictText } from '@clampwright/words';
import { toolsOf } from '../page/card/card-bolts.tsx';
import { finalStep } from '../page/final-step.ts';
import { positionsText } from '../page/spoken.ts';
import { unitsOut } from '../sheet-out/units-out.ts';
import type { Organisation } from '../typeset/chrome.ts';
import type { FormFields, FormValue } from './fill-form.ts';

/** What a client's form can ask of one joint of a plan, by the names its cells bear. Listed in docs/form-fields.md. */
export function planFields(plan: Plan, joint: JointPlan, organisation?: Organisation): FormFields {
  const { force, torque } = unitsOut(plan.job.units);
  const [first] = joint.subgroups;
  const last = first && finalStep(first);
  const list = (of: (one: JointPlan['subgroups'][number]) => string | undefined) =>
    [...new Set(joint.subgroups.flatMap((one) => of(one) ?? []))].join(', ');
  const tools = [...new Set(joint.subgroups.flatMap(toolsOf))];
  const target = first?.tightening?.target.value;
  return new Map<string, FormValue | readonly FormValue[]>([
    ['job.title', plan.job.title],
    ['job.site', plan.job.site],
    ['job.date', plan.job.workDate],
    ['organisation.name', organisation?.name],
    ['joint.tag', joint.tag],
    ['joint.title', joint.title],
    ['joint.verdict', verdictText(joint.verdict)],
    ['joint.rule', joint.rule.title],
    ['joint.flange', joint.flange],
    ['joint.bolts', joint.boltCount],
    ['joint.size', list(({ size }) => size)],
    ['joint.grade', list(({ grade }) => grade)],
    ['joint.lot', list(({ lot }) => lot)],
    ['joint.preload', target === undefined ? undefined : force.of(target)],
    ['joint.preload-unit', force.unit],
    ['joint.torque', last?.setting ? torque.of(last.setting.torque) : undefined],
    ['joint.torque-unit', torque.unit],
    ['joint.setting', last && settingLine(last)],
    ['joint.tool', tools.join(', ')],
    [
      'joint.certificate',
      plan.tools
        .filter(({ serial }) => tools.includes(serial))
        .map(({ certificate }) => certificate)
        .join(', '),
    ],
    ['joint.datum', datumText(joint.datum)],
    ['joint.order', label('card.sequence', { pattern: patternText(joint.sequence.pattern) })],
    ['joint.permit', joint.permits.permit],
    ['step.name', joint.subgroups.flatMap(({ tightening }) => (tightening?.steps ?? []).map(({ name }) => name))],
    ['step.bolts', joint.subgroups.flatMap(({ positions, tightening }) => (tightening?.steps ?? []).map(() => positionsText(positions)))],
    ['step.setting', joint.subgroups.flatMap(({ tightening }) => (tightening?.steps ?? []).map(settingLine))],
    [
      'step.torque',
      joint.subgroups.flatMap(({ tightening }) => (tightening?.steps ?? []).map(({ setting }) => setting && torque.of(setting.torque))),
    ],
    ['bolt.number', joint.sequence.list.flat()],
    ['bolt.turn', joint.sequence.list.flatMap((bolts, at) => bolts.map(() => at + 1))],
  ]);
}
