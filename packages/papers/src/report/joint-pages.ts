import type { Nonconformance } from '@clampwright/record';
import type { Words } from '@clampwright/words';
import { workDrawing } from '../drawing/index.ts';
import { fastenerText } from '../page/bolt-line.ts';
import { positionsText, spoken } from '../page/spoken.ts';
import { type Flow, factPair, figure, heading, list, type Pair, paragraph, said, type Text, table } from '../typeset/index.ts';
import type { JointWork, WorkRow } from './joint-work.ts';
import { minuteOf, type Names, told } from './names.ts';
import { saysOf, settledText } from './nonconformance-text.ts';

const DRAWING = { width: 172, most: 66 } as const;

/** One joint, from the top of a page: what was planned, what was done at each bolt, what was found, who signed. */
export function reportJointPages(flow: Flow, work: JointWork, found: readonly Nonconformance[], names: Names): void {
  const card = names.card(work.id);
  flow.turn();
  flow.section([work.tag, card?.title].filter(Boolean).join(' '), 2);
  heading(flow, work.tag, 1, card ? { under: card.title } : {});
  factPair(flow, [
    { title: said('report.joint.planned'), pairs: plannedFacts(work, names, flow.languages[0]) },
    { title: said('report.joint.told'), pairs: toldFacts(work, names) },
  ]);
  if (card) figure(flow, workDrawing(card, work.look, DRAWING.width, DRAWING.most, flow.languages));
  else paragraph(flow, said('report.joint.no-card'), { ink: 'quiet' });
  if (found.length > 0) {
    heading(flow, said('report.col.found'), 3);
    table(
      flow,
      [
        { head: said('report.col.what'), width: 6, cell: (one) => (words) => saysOf(one, words) },
        { head: said('report.col.settled'), width: 6, cell: (one) => (words) => settledText(one, names, words) },
        {
          head: said('report.col.state'),
          width: 2.4,
          cell: ({ state }) => ({ text: said(`report.state.${state}`), face: 'bold', ink: state === 'settled' ? 'ready' : 'stop' }),
        },
      ],
      found,
      { size: 7.5 },
    );
  }
  const happened = happenings(work, names);
  if (happened.length > 0) list(flow, happened, { size: 8 });
  heading(flow, said('report.joint.work'), 3);
  if (work.rows.length === 0) paragraph(flow, said('report.joint.none'), { ink: 'quiet' });
  else workTable(flow, work.rows, names);
}

function plannedFacts({ id, state }: JointWork, names: Names, first: Words): Pair[] {
  const card = names.card(id);
  const say = spoken(names.units, first);
  const preloads = new Set(card?.subgroups.flatMap(({ tightening }) => (tightening ? say.force(tightening.target.value) : [])));
  return [
    [said('report.joint.plan'), state.plan?.number ?? said('report.nothing-told')],
    ...(card
      ? ([
          [said('col.rule'), ({ term }) => `${term(card.rule.title)}${card.rule.edition === '' ? '' : ` (${card.rule.edition})`}`],
        ] satisfies Pair[])
      : []),
    ...(card?.subgroups ?? []).map(
      (one): Pair => [said('col.bolts'), (words) => `${one.positions.length} × ${fastenerText(one, names.units, words)}`],
    ),
    ...(preloads.size > 0 ? ([[said('col.preload'), [...preloads].join(', ')]] satisfies Pair[]) : []),
  ];
}

function toldFacts({ state, tools, people, done, bolts }: JointWork, names: Names): Pair[] {
  const checked = (one: typeof state.assembly) =>
    one ? said(one.passed ? 'report.passed' : 'report.failed', told(names, one)) : said('report.nothing-told');
  return [
    [said('report.col.bolts-done'), `${done} / ${bolts}`],
    [
      said('report.joint.datum'),
      state.datum
        ? said(state.datum.agrees ? 'report.joint.datum-agrees' : 'report.joint.datum-differs', told(names, state.datum))
        : said('report.nothing-told'),
    ],
    [said('report.joint.assembly'), checked(state.assembly)],
    [said('report.joint.snug'), checked(state.snug)],
    [said('report.joint.tools'), tools.join(', ') || '–'],
    [said('report.joint.people'), people.map(names.person).join(', ') || '–'],
    [
      said('report.joint.signed'),
      ({ label, term }) =>
        state.signatures.map(({ as, mention }) => label('report.joint.signed-as', { as: term(as), ...told(names, mention) })).join('\n') ||
        label('report.not-signed'),
    ],
    ...(state.released.length > 0
      ? ([
          [
            said('report.joint.released'),
            ({ label, term }) =>
              state.released
                .map(({ point, name, seen, mention }) =>
                  label('report.joint.released-as', {
                    point: term(point),
                    name: seen === undefined ? name : `${name}: ${seen}`,
                    ...told(names, mention),
                  }),
                )
                .join('\n'),
          ],
        ] satisfies Pair[])
      : []),
  ];
}

/** What else was told of the joint: tools changed or stopped, gaps, valves, bolts replaced or loosened. */
const happenings = ({ state }: JointWork, names: Names): Text[] => [
  ...state.swaps.map(
    ({ from, to, settings, mention }): Text =>
      ({ label, term, settingText }) =>
        label('report.joint.swapped', {
          from,
          to,
          settings: settings.map(({ step, setting }) => `${term(step)} ${settingText(setting)}`).join(', '),
          ...told(names, mention),
        }),
  ),
  ...state.cutOuts.map(
    ({ tool, cause, mention }): Text =>
      ({ label, term }) =>
        label('report.joint.cut-out', { tool, cause: term(cause), ...told(names, mention) }),
  ),
  ...state.gaps.map(({ at: position, gapMicrometre, mention }) =>
    said('report.joint.gap', { ...told(names, mention), position, gap: `${gapMicrometre / 1000} mm` }),
  ),
  ...state.valves.map(
    ({ direction, turnsThousandth, mention }): Text =>
      ({ label, term }) =>
        label('report.joint.valve', { direction: term(direction), turns: turnsThousandth / 1000, ...told(names, mention) }),
  ),
  ...replacedText(state.bolts),
];

function replacedText(bolts: JointWork['state']['bolts']): Text[] {
  const replaced = [...bolts.values()].filter(({ replaced: times }) => times > 0).map(({ position }) => position);
  const loose = [...bolts.values()].filter(({ loosened }) => loosened).map(({ position }) => position);
  const at = ({ label }: Words, positions: readonly number[]) =>
    label('report.at-bolts', { count: positions.length, positions: positionsText(positions) });
  return [
    ...(replaced.length > 0 ? [(words: Words) => words.label('report.joint.replaced', { bolts: at(words, replaced) })] : []),
    ...(loose.length > 0 ? [(words: Words) => words.label('report.joint.loosened', { bolts: at(words, loose) })] : []),
  ];
}

/** A row for each time a bolt was tightened in a step. */
function workTable(flow: Flow, rows: readonly WorkRow[], names: Names): void {
  const { label, term, settingText } = flow.languages[0];
  const how = ({ told: { batch, paper }, again }: WorkRow) =>
    [
      batch && label('report.how.batch'),
      paper !== undefined && label('report.how.paper', { card: paper }),
      again && label('report.how.again'),
    ]
      .filter(Boolean)
      .join(', ');
  table(
    flow,
    [
      { head: said('report.col.bolt'), width: 1.6, align: 'right', cell: ({ bolt }) => ({ text: String(bolt), face: 'bold' }) },
      { head: said('report.col.step'), width: 2.5, cell: ({ step }) => term(step) },
      {
        head: said('report.col.tool-setting'),
        width: 3.5,
        cell: ({ told: { tool, setting } }) => [tool, setting && settingText(setting)].filter((one) => one !== undefined).join(', '),
      },
      { head: said('report.col.end'), width: 3.2, cell: ({ told: { end } }) => term(end) },
      {
        head: said('report.col.angle'),
        width: 1.4,
        align: 'right',
        cell: ({ told: { angleMilliDegree } }) => (angleMilliDegree === undefined ? '' : `${(angleMilliDegree / 1000).toFixed(0)}°`),
      },
      { head: said('report.col.by'), width: 2.4, cell: ({ told: { by } }) => names.person(by) },
      { head: said('report.col.when'), width: 2.8, cell: ({ told: { at } }) => minuteOf(at) },
      { head: said('report.col.how'), width: 2.1, cell: (row) => ({ text: how(row), ink: 'quiet' }) },
    ],
    rows,
    { size: 7.5 },
  );
}
