import type { JointPlan, KitItem, Plan } from '@clampwright/core';
import { BLACK_INK, openPdf } from '../pdf/index.ts';
import { languagesOf, type PaperOptions, twice } from '../pdf/paper-options.ts';
import { factPairs } from '../told/fact.ts';
import { kitOf, kitRows } from '../told/kit-rows.ts';
import { permitFacts } from '../told/permit-facts.ts';
import { A4, type Flow, facts, heading, letterhead, paragraph, said, setPaper, sheetChrome } from '../typeset/index.ts';
import { baseOf, setText } from '../typeset/set-text.ts';

/** Joints that go up together. */
export interface Lift {
  readonly name: string;
  readonly tags: readonly string[];
}

/**
 * Joints by lift: those whose tags begin alike up to the first hyphen, since a crew carries one part of the structure's bolts at a time.
 * Where the job says otherwise, give the lifts yourself.
 */
function liftsOf({ joints }: Plan): Lift[] {
  const lifts = new Map<string, string[]>();
  for (const { tag } of joints) {
    const name = tag.split('-')[0]!;
    lifts.set(name, [...(lifts.get(name) ?? []), tag]);
  }
  return [...lifts].map(([name, tags]) => ({ name, tags }));
}

/** What to lay out, per lift and per joint, with boxes to count it out and back. PDF, A4, black on white. */
export function kitPdf(plan: Plan, options: PaperOptions & { readonly lifts?: readonly Lift[] }): Promise<Uint8Array> {
  const { letters, organisation, made, progress, lifts = liftsOf(plan) } = options;
  const languages = languagesOf(options);
  const { label, language } = languages[0];
  const about = {
    title: `${label('kit.title')}: ${plan.job.title}`,
    subject: label('paper.subject.kit'),
    engine: plan.engine,
    language,
    made,
  };
  const step = twice(lifts.length, progress);
  return setPaper(openPdf(letters, organisation ? { ...about, author: organisation.name } : about), {
    sheet: A4,
    inks: BLACK_INK,
    languages,
    chrome: sheetChrome({
      title: about.title,
      foot: [organisation?.name, label('paper.engine', { engine: plan.engine }), plan.job.workDate].filter(Boolean).join(' · '),
      cover: true,
    }),
    async compose(flow) {
      flow.move(letterhead(flow.canvas, flow.sheet, organisation) + 4);
      flow.section(label('kit.title'), 1);
      heading(flow, said('kit.title'), 1);
      paragraph(flow, plan.job.title, { size: 11, face: 'bold' });
      paragraph(flow, said('kit.lead'));
      heading(flow, said('kit.whole'), 2);
      kitTable(flow, plan.sums.kit);
      for (const lift of lifts) {
        liftPages(
          flow,
          lift,
          plan.joints.filter(({ tag }) => lift.tags.includes(tag)),
        );
        await step();
      }
    },
  });
}

function liftPages(flow: Flow, { tags }: Lift, joints: readonly JointPlan[]): void {
  flow.turn();
  flow.section(flow.languages[0].label('kit.lift', { tags: tags.join(', ') }), 1);
  heading(flow, said('kit.lift', { tags: tags.join(', ') }), 1);
  kitTable(flow, kitOf(joints.filter(({ verdict }) => verdict !== 'stop')));
  for (const joint of joints) {
    heading(flow, `${joint.tag}  ${joint.title}`, 2, { keep: 30 });
    if (joint.verdict === 'stop') {
      paragraph(flow, ({ label }) => `${label(`verdict-word.${joint.verdict}`)}: ${label('kit.none')}`, { face: 'bold' });
      continue;
    }
    kitTable(flow, joint.kit);
    if (joint.permits.pressure || joint.permits.zone !== 'none')
      facts(
        flow,
        factPairs((words) => permitFacts(joint, words), flow.languages),
        { size: 8.5 },
      );
  }
}

/** A line for each thing: how many, what, and two boxes. */
function kitTable(flow: Flow, kit: readonly KitItem[]): void {
  const right = flow.left + flow.width;
  const head = { size: 7.5, ink: 'quiet', anchor: 'middle' } as const;
  const heads = [said('kit.out'), said('kit.back')].map((text) => flow.lay(text, 12, head));
  for (const [i, x] of [right - 15.3, right - 4.3].entries()) setText(flow.canvas, heads[i]!, { x, y: flow.y() - 0.6 });
  flow.move(Math.max(...heads.map(({ height }) => height)) - 0.2);
  for (const [at, { count }] of kitRows(kit).entries()) {
    const laid = flow.lay((words) => kitRows(kit, words)[at]!.name, flow.width - 42, { size: 10 });
    const height = laid.height + 2.4;
    flow.need(height);
    const top = flow.y() + 1;
    flow.canvas.text({ x: flow.left + 12, y: top + baseOf(10) }, String(count), { size: 12, face: 'bold', anchor: 'end' });
    setText(flow.canvas, laid, { x: flow.left + 16, y: top });
    for (const x of [right - 17.5, right - 6.5]) flow.canvas.box({ x, y: top + 0.1 }, 4.4, 4.4, { stroke: 'ink', line: 0.3 });
    flow.move(height);
    flow.canvas.line({ x: flow.left, y: flow.y() }, { x: right, y: flow.y() }, { line: 0.1 });
  }
  flow.move(3);
}
