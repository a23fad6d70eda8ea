import type { Nonconformance } from '@clampwright/record';
import { label } from '@clampwright/words';
import { workDrawing } from '../drawing/index.ts';
import { fastenerText } from '../page/bolt-line.ts';
import { positionsText, spoken } from '../page/spoken.ts';
import { type Flow, factPair, figure, heading, list, paragraph, table } from '../typeset/index.ts';
import type { JointWork, WorkRow } from './joint-work.ts';
import { minuteOf, type Names, told } from './names.ts';
import { saysOf, settledText } from './nonconformance-text.ts';

const DRAWING = { width: 172, most: 66 } as const;

/** One joint, from the top of a page: what was planned, what was done at each bolt, what was found, who signed. */
export function reportJointPages(flow: Flow, work: JointWork, found: readonly Nonconformance[], names: Names): void {
  const card = names.card(work.id);
  flow.turn();
  flow.section([work.tag, card?.title].filter(Boolean).join(' '), 2);
  heading(flow, work.tag, 1, card ? { second: card.title } : {});
  factPair(flow, [
    { title: label('report.joint.planned'), pairs: plannedFacts(work, names) },
    { title: label('report.joint.told'), pairs: toldFacts(work, names) },
  ]);
  if (card) figure(flow, workDrawing(card, work.look, DRAWING.width, DRAWING.most));
  else paragraph(flow, label('report.joint.no-card'), { ink: 'quiet' });
  if (found.length > 0) {
    heading(flow, label('report.col.found'), 3);
    table(
      flow,
      [
        { head: label('report.col.what'), width: 6, cell: saysOf },
        { head: label('report.col.settled'), width: 6, cell: (one) => settledText(one, names) },
        {
          head: label('report.col.state'),
          width: 2.4,
          cell: ({ state }) => ({ text: label(`report.state.${state}`), face: 'bold', ink: state === 'settled' ? 'ready' : 'stop' }),
        },
      ],
      found,
      { size: 7.5 },
    );
  }
  const happened = happenings(work, names);
  if (happened.length > 0) list(flow, happened, { size: 8 });
  heading(flow, label('report.joint.work'), 3);
  if (work.rows.length === 0) paragraph(flow, label('report.joint.none'), { ink: 'quiet' });
  else workTable(flow, work.rows, names);
}

function plannedFacts({ id, state }: JointWork, names: Names): (readonly [string, string])[] {
  const card = names.card(id);
  const say = spoken(names.units);
  const preloads = new Set(card?.subgroups.flatMap(({ tightening }) => (tightening ? say.force(tightening.target.value) : [])));
  return [
    [label('report.joint.plan'), state.plan?.number ?? label('report.nothing-told')],
    ...(card ? ([[label('col.rule'), `${card.rule.title}${card.rule.edition === '' ? '' : ` (${card.rule.edition})`}`]] as const) : []),
    ...(card?.subgroups ?? []).map((one) => [label('col.bolts'), `${one.positions.length} × ${fastenerText(one, names.units)}`] as const),
    ...(preloads.size > 0 ? ([[label('col.preload'), [...preloads].join(', ')]] as const) : []),
  ];
}

function toldFacts({ state, tools, people, done, bolts }: JointWork, names: Names): (readonly [string, string])[] {
  const checked = (one: typeof state.assembly) =>
    one ? label(one.passed ? 'report.passed' : 'report.failed', told(names, one)) : label('report.nothing-told');
  return [
    [label('report.col.bolts-done'), `${done} / ${bolts}`],
    [
      label('report.joint.datum'),
      state.datum
        ? label(state.datum.agrees ? 'report.joint.datum-agrees' : 'report.joint.datum-differs', told(names, state.datum))
        : label('report.nothing-told'),
    ],
    [label('report.joint.assembly'), checked(state.assembly)],
    [label('report.joint.snug'), checked(state.snug)],
    [label('report.joint.tools'), tools.join(', ') || '–'],
    [label('report.joint.people'), people.map(names.person).join(', ') || '–'],
    [
      label('report.joint.signed'),
      state.signatures.map(({ as, mention }) => label('report.joint.signed-as', { as, ...told(names, mention) })).join('\n') ||
        label('report.not-signed'),
    ],
    ...(state.released.length > 0
      ? ([
          [
            label('report.joint.released'),
            state.released
              .map(({ point, name, mention }) => label('report.joint.released-as', { point, name, ...told(names, mention) }))
              .join('\n'),
          ],
        ] as const)
      : []),
  ];
}

/** What else was told of the joint: tools changed or stopped, gaps, valves, bolts replaced or loosened. */
const happenings = ({ state }: JointWork, names: Names): string[] => [
  ...state.swaps.map(({ from, to, settings, mention }) =>
    label('report.joint.swapped', {
      from,
      to,
      settings: settings.map(({ step, setting }) => `${step} ${setting}`).join(', '),
      ...told(names, mention),
    }),
  ),
  ...state.cutOuts.map(({ tool, cause, mention }) => label('report.joint.cut-out', { tool, cause, ...told(names, mention) })),
  ...state.gaps.map(({ at: position, gapMicrometre, mention }) =>
    label('report.joint.gap', { ...told(names, mention), position, gap: `${gapMicrometre / 1000} mm` }),
  ),
  ...state.valves.map(({ direction, turnsThousandth, mention }) =>
    label('report.joint.valve', { direction, turns: turnsThousandth / 1000, ...told(names, mention) }),
  ),
  ...replacedText(state.bolts),
];

function replacedText(bolts: JointWork['state']['bolts']): string[] {
  const replaced = [...bolts.values()].filter(({ replaced: times }) => times > 0).map(({ position }) => position);
  const loose = [...bolts.values()].filter(({ loosened }) => loosened).map(({ position }) => position);
  const at = (positions: readonly number[]) => label('report.at-bolts', { count: positions.length, positions: positionsText(positions) });
  return [
    ...(replaced.length > 0 ? [label('report.joint.replaced', { bolts: at(replaced) })] : []),
    ...(loose.length > 0 ? [label('report.joint.loosened', { bolts: at(loose) })] : []),
  ];
}

/** A row for each time a bolt was tightened in a step. */
function workTable(flow: Flow, rows: readonly WorkRow[], names: Names): void {
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
      { head: label('report.col.bolt'), width: 1, align: 'right', cell: ({ bolt }) => ({ text: String(bolt), face: 'bold' }) },
      { head: label('report.col.step'), width: 2, cell: ({ step }) => step },
      {
        head: label('report.col.tool-setting'),
        width: 4.2,
        cell: ({ told: { tool, setting } }) => [tool, setting].filter((one) => one !== undefined).join(', '),
      },
      { head: label('report.col.end'), width: 2.4, cell: ({ told: { end } }) => end },
      {
        head: label('report.col.angle'),
        width: 1.1,
        align: 'right',
        cell: ({ told: { angleMilliDegree } }) => (angleMilliDegree === undefined ? '' : `${(angleMilliDegree / 1000).toFixed(0)}°`),
      },
      { head: label('report.col.by'), width: 2.6, cell: ({ told: { by } }) => names.person(by) },
      { head: label('report.col.when'), width: 2.7, cell: ({ told: { at } }) => minuteOf(at) },
      { head: label('report.col.how'), width: 2.2, cell: (row) => ({ text: how(row), ink: 'quiet' }) },
    ],
    rows,
    { size: 7.5 },
  );
}
