import type { Nonconformance } from '@clampwright/record';
import { label } from '@clampwright/words';
import { callout, type Flow, facts, heading, letterhead, type Organisation, paragraph, table, tallies } from '../typeset/index.ts';
import type { JointWork } from './joint-work.ts';
import { minuteOf, type Names } from './names.ts';
import { saysOf } from './nonconformance-text.ts';
import type { ReportSource } from './source.ts';

/** First page: what the book is, the sums, what is still open, and every joint on a line. Open matters stay here until they are settled. */
export function reportCover(
  flow: Flow,
  source: ReportSource,
  told: {
    readonly works: readonly JointWork[];
    readonly found: readonly Nonconformance[];
    readonly names: Names;
    readonly made: Date;
    readonly last: string;
  },
  organisation: Organisation | undefined,
): void {
  const { works, found, names } = told;
  const { plans } = source.fold.state('book', 'book');
  const open = found.filter(({ state }) => state !== 'settled');
  const signed = works.filter(({ crewSigned }) => crewSigned).length;
  flow.move(letterhead(flow.canvas, flow.sheet, organisation) + 4);
  flow.section(label('report.title'), 1);
  paragraph(flow, label('report.title'), { size: 10, ink: 'quiet', after: 0.5 });
  heading(flow, source.title, 1);
  facts(flow, [
    [label('job.site'), source.site],
    [label('report.made'), minuteOf(told.made.toISOString())],
    [label('report.entries'), label('report.entries-value', { count: source.size, last: minuteOf(told.last) })],
    [
      label('report.plans'),
      plans
        .map(({ number, withdrawn }) =>
          withdrawn === undefined ? number : `${number} (${label('report.withdrawn', { reason: withdrawn })})`,
        )
        .join(', ') || '–',
    ],
  ]);
  const bolts = works.reduce((sum, one) => sum + one.bolts, 0);
  tallies(flow, [
    { count: signed, name: label('report.tally.joints'), text: label('report.tally.joints-text', { of: works.length }), ink: 'ready' },
    {
      count: works.reduce((sum, { done }) => sum + done, 0),
      name: label('report.tally.bolts'),
      text: label('report.tally.bolts-text', { of: bolts }),
      ink: 'ready',
    },
    { count: open.length, name: label('report.tally.open'), text: label('report.tally.open-text'), ink: 'stop' },
  ]);
  paragraph(flow, label('report.lead'), { size: 8.5, ink: 'quiet' });
  heading(flow, label('report.open'), 2);
  if (open.length === 0) callout(flow, label('report.open-none'), '', 'ready');
  else openTable(flow, open, names);
  heading(flow, label('report.joints'), 2);
  jointTable(flow, works, found, names);
}

/** More stand in the chapter of nonconformances. */
const MOST_OPEN = 12;

function openTable(flow: Flow, open: readonly Nonconformance[], names: Names): void {
  table(
    flow,
    [
      { head: label('report.col.joint'), width: 2, cell: ({ joint }) => (joint === undefined ? '–' : names.joint(joint)) },
      { head: label('report.col.what'), width: 8, cell: saysOf },
      {
        head: label('report.col.state'),
        width: 2.6,
        cell: ({ state }) => ({ text: label(`report.state.${state}`), face: 'bold', ink: 'stop' }),
      },
    ],
    open.slice(0, MOST_OPEN),
    { size: 7.5 },
  );
  if (open.length > MOST_OPEN) paragraph(flow, label('report.more-open', { count: open.length - MOST_OPEN }), { size: 8.5 });
}

function jointTable(flow: Flow, works: readonly JointWork[], found: readonly Nonconformance[], names: Names): void {
  const say = (mention: JointWork['crewSigned']) =>
    mention ? `${names.person(mention.by)}\n${minuteOf(mention.at)}` : { text: label('report.not-signed'), ink: 'stop' as const };
  const countOf = (id: string) => found.filter(({ joint }) => joint === id);
  table(
    flow,
    [
      { head: label('report.col.joint'), width: 4, cell: ({ tag, id }) => [tag, names.card(id)?.title].filter(Boolean).join('\n') },
      { head: label('report.joint.plan'), width: 1.4, cell: ({ state }) => state.plan?.number ?? '–' },
      {
        head: label('report.col.bolts-done'),
        width: 1.8,
        align: 'right',
        cell: ({ done, bolts }) => ({ text: `${done} / ${bolts}`, face: 'bold', ink: done === bolts ? 'ready' : 'stop' }),
      },
      { head: label('report.col.crew'), width: 3, cell: ({ crewSigned }) => say(crewSigned) },
      { head: label('report.col.inspector'), width: 3, cell: ({ inspectorSigned }) => say(inspectorSigned) },
      {
        head: label('report.col.found'),
        width: 2.2,
        align: 'right',
        cell: ({ id }) => {
          const own = countOf(id);
          const left = own.filter(({ state }) => state !== 'settled').length;
          return own.length === 0
            ? '–'
            : { text: label('report.found', { count: own.length, open: left }), ink: left > 0 ? 'stop' : 'ink' };
        },
      },
    ],
    works,
    { size: 7.5 },
  );
}
