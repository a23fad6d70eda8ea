import type { Nonconformance } from '@clampwright/record';
import type { PrintedKey } from '@clampwright/words';
import { type Flow, heading, paragraph, said, signatureLines, type Text, table } from '../typeset/index.ts';
import type { JointWork } from './joint-work.ts';
import { minuteOf, type Names, short } from './names.ts';
import { saysOf, settledText } from './nonconformance-text.ts';
import type { ReportSource } from './source.ts';

/** Room a chapter needs to begin under another, mm. */
const BEGIN = 80;

const chapter = (flow: Flow, title: PrintedKey) => {
  if (!flow.need(BEGIN)) flow.move(6);
  flow.section(flow.languages[0].label(title), 1);
  heading(flow, said(title), 1);
};
const nothing = (flow: Flow, text: Text) => paragraph(flow, text, { ink: 'quiet' });
const when = (names: Names) =>
  [
    { head: said('report.col.by'), width: 2.6, cell: ({ mention }: Mentioned) => names.person(mention.by) },
    { head: said('report.col.when'), width: 2.4, cell: ({ mention }: Mentioned) => minuteOf(mention.at) },
  ] as const;
interface Mentioned {
  readonly mention: { readonly by?: string; readonly at: string; readonly device: string };
}
const result = ({ passed }: { readonly passed: boolean }) =>
  ({ text: said('report.result', { passed: passed ? 'yes' : 'no' }), face: 'bold', ink: passed ? 'ready' : 'stop' }) as const;

/** What was found, who settled it, and what had been agreed beforehand. */
export function nonconformanceChapter(flow: Flow, { fold }: ReportSource, found: readonly Nonconformance[], names: Names): void {
  flow.turn();
  chapter(flow, 'report.nonconformances');
  if (found.length === 0) nothing(flow, said('report.nonconformances-none'));
  else
    table(
      flow,
      [
        { head: said('report.col.joint'), width: 1.8, cell: ({ joint }) => (joint === undefined ? '–' : names.joint(joint)) },
        { head: said('report.col.what'), width: 5, cell: (one) => (words) => saysOf(one, words) },
        { head: said('report.col.settled'), width: 5, cell: (one) => (words) => settledText(one, names, words) },
        {
          head: said('report.col.state'),
          width: 2.2,
          cell: ({ state }) => ({ text: said(`report.state.${state}`), face: 'bold', ink: state === 'settled' ? 'ready' : 'stop' }),
        },
      ],
      found,
      { size: 7.5 },
    );
  heading(flow, said('report.concessions'), 2);
  const { concessions } = fold.state('book', 'book');
  if (concessions.length === 0) nothing(flow, said('report.concessions-none'));
  else
    table(
      flow,
      [
        { head: said('report.col.number'), width: 1.6, cell: ({ number }) => number },
        { head: said('report.col.what'), width: 6, cell: ({ text }) => text },
        { head: said('report.col.authority'), width: 2.6, cell: ({ authority }) => authority },
        ...when(names),
      ],
      concessions,
    );
}

/** Every bolt that was looked at, and the verdict on it. */
export function inspectionChapter(flow: Flow, works: readonly JointWork[], names: Names): void {
  chapter(flow, 'report.inspection');
  const rows = works.flatMap(({ tag, state }) =>
    [...state.bolts.values()]
      .sort((a, b) => a.position - b.position)
      .flatMap(({ position, inspections }) => inspections.map((one) => ({ tag, position, ...one }))),
  );
  if (rows.length === 0) {
    nothing(flow, said('report.inspection-none'));
    return;
  }
  table(
    flow,
    [
      { head: said('report.col.joint'), width: 2.4, cell: ({ tag }) => tag },
      { head: said('report.col.bolt'), width: 1.2, align: 'right', cell: ({ position }) => String(position) },
      { head: said('report.col.result'), width: 1.8, cell: result },
      {
        head: said('report.col.angle'),
        width: 1.2,
        align: 'right',
        cell: ({ angleMilliDegree }) => (angleMilliDegree === undefined ? '' : `${(angleMilliDegree / 1000).toFixed(1)}°`),
      },
      ...when(names),
    ],
    rows,
  );
}

/** Tools with their certificates, the daily checks, and the lots with their tests. */
export function toolChapter(flow: Flow, { fold }: ReportSource, names: Names): void {
  chapter(flow, 'report.tools');
  const tools = fold.ids('tool').map((id) => fold.state('tool', id));
  if (tools.length === 0) nothing(flow, said('report.tools-none'));
  else
    table(
      flow,
      [
        { head: said('col.tool'), width: 2.2, cell: ({ serial }) => serial },
        {
          head: said('report.col.name'),
          width: 4,
          cell:
            ({ name, withdrawn }) =>
            ({ label }) =>
              [name, withdrawn && label('report.withdrawn-tool')].filter(Boolean).join(', '),
        },
        { head: said('report.col.certificate'), width: 2.4, cell: ({ serial }) => names.certificate(serial) ?? '–' },
        { head: said('report.col.due'), width: 2, cell: ({ due }) => due ?? '–' },
        { head: said('report.col.tightened'), width: 1.8, align: 'right', cell: ({ tightened }) => String(tightened) },
      ],
      tools,
    );
  heading(flow, said('report.checks'), 2);
  const checks = tools.flatMap(({ serial, checks: all }) => all.map((one) => ({ serial, ...one })));
  if (checks.length === 0) nothing(flow, said('report.checks-none'));
  else
    table(
      flow,
      [
        { head: said('col.tool'), width: 2.2, cell: ({ serial }) => serial },
        { head: said('report.col.result'), width: 1.8, cell: result },
        {
          head: said('report.col.reading'),
          width: 2,
          align: 'right',
          cell: ({ readingNewtonMillimetre }) =>
            readingNewtonMillimetre === undefined ? '' : `${(readingNewtonMillimetre / 1000).toFixed(0)} N·m`,
        },
        ...when(names),
      ],
      checks,
    );
  heading(flow, said('report.lots'), 2);
  const lots = fold.ids('lot').map((id) => fold.state('lot', id));
  if (lots.length === 0) nothing(flow, said('report.lots-none'));
  else
    table(
      flow,
      [
        { head: said('report.col.name'), width: 3, cell: ({ lot, name }) => name ?? short(lot) },
        {
          head: said('report.col.result'),
          width: 6,
          cell:
            ({ tests }) =>
            ({ label }) =>
              tests
                .map(
                  ({ mention, passed }) =>
                    `${label('report.result', { passed: passed ? 'yes' : 'no' })}, ${names.person(mention.by)}, ${minuteOf(mention.at)}`,
                )
                .join('\n') || '–',
        },
      ],
      lots,
    );
}

/** Who may act in this log, and who signed. */
export function peopleChapter(flow: Flow, { fold }: ReportSource, works: readonly JointWork[], names: Names): void {
  chapter(flow, 'report.people');
  const people = fold.ids('person').map((id) => fold.state('person', id));
  if (people.length === 0) nothing(flow, said('report.people-none'));
  else
    table(
      flow,
      [
        {
          head: said('report.col.name'),
          width: 4,
          cell: ({ person }) => {
            const name = names.person(person);
            return name === short(person) ? ({ label }) => `${name}\n${label('report.name-erased')}` : name;
          },
        },
        {
          head: said('report.col.roles'),
          width: 3,
          cell:
            ({ roles }) =>
            ({ term }) =>
              roles.map(term).join(', '),
        },
        {
          head: said('report.col.qualified'),
          width: 4,
          cell:
            ({ qualification, qualifiedUntil, revoked }) =>
            ({ label }) =>
              [qualification, qualifiedUntil, revoked && label('report.revoked')].filter(Boolean).join(', ') || '–',
        },
      ],
      people,
    );
  heading(flow, said('report.signatures'), 2);
  paragraph(flow, said('report.signatures-lead'), { ink: 'quiet', size: 8.5 });
  const signatures = works.flatMap(({ tag, state }) => state.signatures.map((one) => ({ tag, ...one })));
  if (signatures.length === 0) nothing(flow, said('report.signatures-none'));
  else
    table(
      flow,
      [
        { head: said('report.col.joint'), width: 2.4, cell: ({ tag }) => tag },
        {
          head: said('report.col.as'),
          width: 1.6,
          cell:
            ({ as }) =>
            ({ term }) =>
              term(as),
        },
        ...when(names),
        { head: said('report.col.device'), width: 2.4, cell: ({ mention }) => names.device(mention.device) },
      ],
      signatures,
    );
  heading(flow, said('report.hand'), 3);
  signatureLines(flow, [said('report.hand.crew'), said('report.hand.inspector'), said('report.hand.client')]);
  const { notes } = fold.state('book', 'book');
  if (notes.length === 0) return;
  heading(flow, said('report.notes'), 2);
  table(
    flow,
    [
      {
        head: said('report.col.what'),
        width: 8,
        cell: ({ text, joint }) => (joint === undefined ? text : `${names.joint(joint)}: ${text}`),
      },
      ...when(names),
    ],
    notes,
  );
}
