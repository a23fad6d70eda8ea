import type { JointPlan, Plan } from '@clampwright/core';
import type { Words } from '@clampwright/words';
import { positionsText, spoken } from '../page/spoken.ts';
import { factText } from '../told/fact.ts';
import { preloadFacts } from '../told/preload-facts.ts';
import { type Flow, heading, paragraph, said, type Text, table } from '../typeset/index.ts';

interface Line {
  readonly what: string;
  readonly value: string;
  readonly source: string;
}

/** Every figure of the plan with its formula and its source, joint by joint; joints that say the same stand together. */
export function planAnnex(flow: Flow, plan: Plan): void {
  flow.turn();
  flow.section(flow.languages[0].label('paper.annex'), 1);
  heading(flow, said('paper.annex'), 1);
  paragraph(flow, said('paper.annex-lead'), { ink: 'quiet' });
  const groups = new Map<string, { readonly tags: string[]; readonly joint: JointPlan; readonly lines: readonly Line[] }>();
  for (const joint of plan.joints) {
    const lines = linesOf(joint, plan.job.units, flow.languages[0]);
    const key = JSON.stringify(lines);
    const group = groups.get(key);
    if (group) group.tags.push(joint.tag);
    else groups.set(key, { tags: [joint.tag], joint, lines });
  }
  for (const { tags, joint, lines } of groups.values()) {
    if (lines.length === 0) continue;
    heading(flow, tags.join(', '), 2);
    const inLanguage =
      (part: keyof Line) =>
      (line: Line): Text => {
        const at = lines.indexOf(line);
        return (words) => linesOf(joint, plan.job.units, words)[at]![part];
      };
    table(
      flow,
      [
        { head: said('paper.what'), width: 3, cell: inLanguage('what') },
        { head: said('paper.value'), width: 5, cell: inLanguage('value') },
        { head: said('paper.source'), width: 5, cell: (line) => ({ text: inLanguage('source')(line), ink: 'quiet' }) },
      ],
      lines,
      { size: 7.5 },
    );
  }
}

function linesOf(joint: JointPlan, units: Plan['job']['units'], words: Words): Line[] {
  const say = spoken(units, words);
  const { label } = words;
  return joint.subgroups.flatMap(({ positions, tightening }) => {
    if (!tightening) return [];
    const which = joint.subgroups.length > 1 ? `${label('joint.bolts', { positions: positionsText(positions) })}: ` : '';
    return [
      ...preloadFacts(tightening, units, words).map((fact) => ({
        what: `${which}${fact.name}`,
        value: factText(fact),
        source: fact.source ?? '',
      })),
      ...tightening.steps.map((step) => ({
        what: `${which}${label('paper.step-source', { step: words.step(step.name) })}`,
        value: step.torque
          ? `${say.torque(step.torque.wanted)} (${say.torque(step.torque.low)} – ${say.torque(step.torque.high)})`
          : words.end(step.end, units),
        source: words.source(step.source),
      })),
    ];
  });
}
