import type { InteractionPlan, JointPlan } from '@clampwright/core';
import { remedy, says, type UnitSystem } from '@clampwright/words';
import { positionsText } from '../spoken.ts';
import type { CardBlock } from './card-block.ts';
import { headTexts } from './card-head.tsx';
import { roundsText } from './card-rounds.tsx';
import type { CardRow } from './card-rows.ts';
import type { CardSheet } from './card-sheet.ts';
import { boxedSteps, tickHeight } from './tick-layout.ts';

/** A5 less its margins, and the head of every side, mm. All heights here are estimates on the safe side: a page lays out its own text. */
export const SIDE_HEIGHT = 192;
export const SIDE_HEAD = 17;
const GAP = 2.2;
const TEXT_LINE = 4.3;

export const linesOf = (text: string, perLine: number): number => Math.max(1, Math.ceil(text.length / perLine));
const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

type Heights = {
  readonly [K in CardBlock['kind']]: (block: Extract<CardBlock, { kind: K }>, joint: JointPlan, units: UnitSystem) => number;
};
const HEIGHTS: Heights = {
  head: (_, joint, units) => TEXT_LINE * sum(headTexts(joint, units).map((text) => linesOf(text, 62))),
  reasons: ({ reasons }, _, units) =>
    sum(reasons.map((reason) => TEXT_LINE * linesOf(`${says(reason, units)} ${remedy(reason, units)}`, 70) + 0.6)),
  bolts: (_, { subgroups }) => sum(subgroups.map(({ tightening }) => (tightening?.rotation ? 12.2 : 8.6))),
  steps: ({ rows }) => sum(rows.map(rowHeight)),
  rounds: ({ interaction }, { boltCount }) => TEXT_LINE * roundLines(interaction, boltCount),
  drawing: ({ height }) => height,
  ticks: ({ lines, perLine }, joint) => lines.length * tickHeight(perLine, boxedSteps(joint).length),
  checks: (_, { checks }) => 5 + 4.4 * Math.ceil(checks.length / 2),
  cautions: ({ codes }) => 5 + 7 * Math.ceil(codes.length / 2),
  // three lines of fields, one more for papers, remarks, signatures
  record: (_, { permits }) => 8.5 * (permits.permit === undefined && permits.gasTest === undefined ? 4 : 5) + 13,
};

const rowHeight = ({ settings, order }: CardRow) =>
  (order === 'circular' ? 7.2 : 6.4) +
  sum(settings.map(({ step }) => (step.setting === undefined && step.end.kind !== 'mark at angle' ? 5.6 : 8.4)));

const roundLines = (interaction: InteractionPlan, bolts: number) =>
  interaction.mode === 'one setting a round'
    ? linesOf(roundsText(interaction, bolts), 78)
    : 2 + sum(interaction.rounds.map(({ settings }) => 1 + sum(settings.map((one) => linesOf(positionsText(one.bolts), 50)))));

const OPENING: Partial<Readonly<Record<CardBlock['kind'], number>>> = { reasons: 4, drawing: 5 + GAP, ticks: 10 };

/** A5 as the HTML page prints it. */
export const PAGE_SHEET: CardSheet = {
  room: SIDE_HEIGHT - SIDE_HEAD,
  firstHead: ({ title, tag }) => 4.6 * linesOf(title, 56) + 10 * (linesOf(tag, 20) - 1),
  height: (block, joint, units) =>
    (HEIGHTS[block.kind] as (one: CardBlock, joint: JointPlan, units: UnitSystem) => number)(block, joint, units),
  opening: (kind) => GAP + (OPENING[kind] ?? 0),
  leastDrawing: ({ layout, boltCount }) => (layout.kind === 'group' ? 46 : Math.min(64, Math.max(50, 42 + boltCount))),
  mostDrawing: 86,
  perLine: [5, 10],
};
