import type { Nonconformance } from '@clampwright/record';
import { callout, type Flow, facts, heading, letterhead, type Organisation, paragraph, said, table, tallies } from '../typeset/index.ts';
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
  flow.section(flow.languages[0].label('report.title'), 1);
  paragraph(flow, said('report.title'), { size: 10, ink: 'quiet', after: 0.5 });
  heading(flow, source.title, 1);
  facts(flow, [
    [said('job.site'), source.site],
    [said('report.made'), minuteOf(told.made.toISOString())],
    [said('report.entries'), said('report.entries-value', { count: source.size, last: minuteOf(told.last) })],
    [
      said('report.plans'),
      ({ label }) =>
        plans
          .map(({ number, withdrawn }) =>
            withdrawn === undefined ? number : `${number} (${label('report.withdrawn', { reason: withdrawn })})`,
          )
          .join(', ') || '–',
    ],
  ]);
  const bolts = works.reduce((sum, one) => sum + one.bolts, 0);
  tallies(flow, [
    { count: signed, name: said('report.tally.joints'), text: said('report.tally.joints-text', { of: works.length }), ink: 'ready' },
    {
      count: works.reduce((sum, { done }) => sum + done, 0),
      name: said('report.tally.bolts'),
      text: said('report.tally.bolts-text', { of: bolts }),
      ink: 'ready',
    },
    { count: open.length, name: said('report.tally.open'), text: said('report.tally.open-text'), ink: 'stop' },
  ]);
  paragraph(flow, said('report.lead'), { size: 8.5, ink: 'quiet' });
  heading(flow, said('report.open'), 2);
  if (open.length === 0) callout(flow, said('report.open-none'), '', 'ready');
  else openTable(flow, open, names);
  heading(flow, said('report.joints'), 2);
  jointTable(flow, works, found, names);
}

/** More stand in the chapter of nonconformances. */
const MOST_OPEN = 12;

function openTable(flow: Flow, open: readonly Nonconformance[], names: Names): void {
  table(
    flow,
    [
      { head: said('report.col.joint'), width: 2, cell: ({ joint }) => (joint === undefined ? '–' : names.joint(joint)) },
      { head: said('report.col.what'), width: 8, cell: (one) => (words) => saysOf(one, words) },
      {
        head: said('report.col.state'),
        width: 2.6,
        cell: ({ state }) => ({ text: said(`report.state.${state}`), face: 'bold', ink: 'stop' }),
      },
    ],
    open.slice(0, MOST_OPEN),
    { size: 7.5 },
  );
  if (open.length > MOST_OPEN) paragraph(flow, said('report.more-open', { count: open.length - MOST_OPEN }), { size: 8.5 });
}

function jointTable(flow: Flow, works: readonly JointWork[], found: readonly Nonconformance[], names: Names): void {
  const say = (mention: JointWork['crewSigned']) =>
    mention ? `${names.person(mention.by)}\n${minuteOf(mention.at)}` : { text: said('report.not-signed'), ink: 'stop' as const };
  const countOf = (id: string) => found.filter(({ joint }) => joint === id);
  table(
    flow,
    [
      { head: said('report.col.joint'), width: 4, cell: ({ tag, id }) => [tag, names.card(id)?.title].filter(Boolean).join('\n') },
      { head: said('report.joint.plan'), width: 1.4, cell: ({ state }) => state.plan?.number ?? '–' },
      {
        head: said('report.col.bolts-done'),
        width: 1.8,
        align: 'right',
        cell: ({ done, bolts }) => ({ text: `${done} / ${bolts}`, face: 'bold', ink: done === bolts ? 'ready' : 'stop' }),
      },
      { head: said('report.col.crew'), width: 3, cell: ({ crewSigned }) => say(crewSigned) },
      { head: said('report.col.inspector'), width: 3, cell: ({ inspectorSigned }) => say(inspectorSigned) },
      {
        head: said('report.col.found'),
        width: 2.2,
        align: 'right',
        cell: ({ id }) => {
          const own = countOf(id);
          const left = own.filter(({ state }) => state !== 'settled').length;
          return own.length === 0 ? '–' : { text: said('report.found', { count: own.length, open: left }), ink: left > 0 ? 'stop' : 'ink' };
        },
      },
    ],
    works,
    { size: 7.5 },
  );
}
