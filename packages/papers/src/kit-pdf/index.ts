import type { JointPlan, KitItem, Plan } from '@clampwright/core';
import { label, verdictText } from '@clampwright/words';
import { BLACK_INK, openPdf } from '../pdf/index.ts';
import { type PaperOptions, twice } from '../pdf/paper-options.ts';
import { kitOf, kitRows } from '../told/kit-rows.ts';
import { permitFacts } from '../told/permit-facts.ts';
import { baseOf, leadingOf, setLines } from '../typeset/flow.ts';
import { A4, type Flow, facts, heading, letterhead, paragraph, setPaper, sheetChrome } from '../typeset/index.ts';

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
export function kitPdf(
  plan: Plan,
  { letters, organisation, made, progress, lifts = liftsOf(plan) }: PaperOptions & { readonly lifts?: readonly Lift[] },
): Promise<Uint8Array> {
  const about = { title: `${label('kit.title')}: ${plan.job.title}`, subject: label('paper.subject.kit'), engine: plan.engine, made };
  const step = twice(lifts.length, progress);
  return setPaper(openPdf(letters, organisation ? { ...about, author: organisation.name } : about), {
    sheet: A4,
    inks: BLACK_INK,
    chrome: sheetChrome({
      title: about.title,
      foot: [organisation?.name, label('paper.engine', { engine: plan.engine }), plan.job.workDate].filter(Boolean).join(' · '),
      cover: true,
    }),
    async compose(flow) {
      flow.move(letterhead(flow.canvas, flow.sheet, organisation) + 4);
      flow.section(label('kit.title'), 1);
      heading(flow, label('kit.title'), 1);
      paragraph(flow, plan.job.title, { size: 11, face: 'bold' });
      paragraph(flow, label('kit.lead'));
      heading(flow, label('kit.whole'), 2);
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
  flow.section(label('kit.lift', { tags: tags.join(', ') }), 1);
  heading(flow, label('kit.lift', { tags: tags.join(', ') }), 1);
  kitTable(flow, kitOf(joints.filter(({ verdict }) => verdict !== 'stop')));
  for (const joint of joints) {
    heading(flow, `${joint.tag}  ${joint.title}`, 2, { keep: 30 });
    if (joint.verdict === 'stop') {
      paragraph(flow, `${verdictText(joint.verdict)}: ${label('kit.none')}`, { face: 'bold' });
      continue;
    }
    kitTable(flow, joint.kit);
    if (joint.permits.pressure || joint.permits.zone !== 'none')
      facts(
        flow,
        permitFacts(joint).map(({ name, text }) => [name, text] as const),
        { size: 8.5 },
      );
  }
}

/** A line for each thing: how many, what, and two boxes. */
function kitTable(flow: Flow, kit: readonly KitItem[]): void {
  const right = flow.left + flow.width;
  const head = { size: 7.5, ink: 'quiet', anchor: 'middle' } as const;
  flow.canvas.text({ x: right - 15, y: flow.y() + 2 }, label('kit.out'), head);
  flow.canvas.text({ x: right - 4, y: flow.y() + 2 }, label('kit.back'), head);
  flow.move(3);
  for (const { count, name } of kitRows(kit)) {
    const lines = flow.lines(name, flow.width - 42, { size: 10 });
    const height = Math.max(1, lines.length) * leadingOf(10) + 2.4;
    flow.need(height);
    const top = flow.y() + 1;
    flow.canvas.text({ x: flow.left + 12, y: top + baseOf(10) }, String(count), { size: 12, face: 'bold', anchor: 'end' });
    setLines(flow.canvas, lines, { x: flow.left + 16, y: top }, { size: 10 });
    for (const x of [right - 17.5, right - 6.5]) flow.canvas.box({ x, y: top + 0.1 }, 4.4, 4.4, { stroke: 'ink', line: 0.3 });
    flow.move(height);
    flow.canvas.line({ x: flow.left, y: flow.y() }, { x: right, y: flow.y() }, { line: 0.1 });
  }
  flow.move(3);
}
