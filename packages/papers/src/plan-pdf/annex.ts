import type { JointPlan, Plan } from '@clampwright/core';
import { endText, label, sourceText, stepText } from '@clampwright/words';
import { positionsText, spoken } from '../page/spoken.ts';
import { preloadFacts } from '../told/preload-facts.ts';
import { type Flow, heading, paragraph, table } from '../typeset/index.ts';

interface Line {
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

/** Every figure of the plan with its formula and its source, joint by joint; joints that say the same stand together. */
export function planAnnex(flow: Flow, plan: Plan): void {
  flow.turn();
  flow.section(label('paper.annex'), 1);
  heading(flow, label('paper.annex'), 1);
  paragraph(flow, label('paper.annex-lead'), { ink: 'quiet' });
  const groups = new Map<string, { readonly tags: string[]; readonly lines: readonly Line[] }>();
  for (const joint of plan.joints) {
    const lines = linesOf(joint, plan.job.units);
    const key = JSON.stringify(lines);
    const group = groups.get(key);
    if (group) group.tags.push(joint.tag);
    else groups.set(key, { tags: [joint.tag], lines });
  }
  for (const { tags, lines } of groups.values()) {
    if (lines.length === 0) continue;
    heading(flow, tags.join(', '), 2);
    table(
      flow,
      [
        { head: label('paper.what'), width: 3, cell: ({ what }) => what },
        { head: label('paper.value'), width: 5, cell: ({ value }) => value },
        { head: label('paper.source'), width: 5, cell: ({ source }) => ({ text: source, ink: 'quiet' }) },
      ],
      lines,
      { size: 7.5 },
    );
  }
}

function linesOf(joint: JointPlan, units: Plan['job']['units']): Line[] {
  const say = spoken(units);
  return joint.subgroups.flatMap(({ positions, tightening }) => {
    if (!tightening) return [];
    const which = joint.subgroups.length > 1 ? `${label('joint.bolts', { positions: positionsText(positions) })}: ` : '';
    return [
      ...preloadFacts(tightening, units).map(({ name, leading, text, source }) => ({
        what: `${which}${name}`,
        value: [leading, text].filter((one) => one !== undefined).join(' '),
        source: source ?? '',
      })),
      ...tightening.steps.map((step) => ({
        what: `${which}${label('paper.step-source', { step: stepText(step.name) })}`,
        value: step.torque
          ? `${say.torque(step.torque.wanted)} (${say.torque(step.torque.low)} – ${say.torque(step.torque.high)})`
          : endText(step.end, units),
        source: sourceText(step.source),
      })),
    ];
  });
}
