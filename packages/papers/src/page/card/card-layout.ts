import type { JointPlan } from '@clampwright/core';
import { remedy, says, type UnitSystem } from '@clampwright/words';
import { positionsText } from '../spoken.ts';
import type { CardBlock, CardPiece } from './card-block.ts';
import { headTexts } from './card-head.tsx';
import { roundsText } from './card-rounds.tsx';
import { type CardRow, cardRows } from './card-rows.ts';
import { pack } from './pack.ts';
import { boxedSteps, type PerLine, tickHeight, tickLines } from './tick-layout.ts';

/** A5 less its margins, and the head of every side, mm. All heights here are estimates on the safe side. */
export const SIDE_HEIGHT = 192;
export const SIDE_HEAD = 17;
const GAP = 2.2;
const TEXT_LINE = 4.3;
const LARGEST_DRAWING = 86;
/** Settings of one step that stay together, where a joint has very many subgroups. */
const MOST_SETTINGS = 12;

export const linesOf = (text: string, perLine: number): number => Math.max(1, Math.ceil(text.length / perLine));
const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

/**
 * Spreads a card over as few sides as hold it. Drawing beside the steps and cautions overleaf, drawing and cautions on a side of
 * their own, or drawing with the boxes; large boxes or small: the first of these with the fewest sides.
 */
export function layCard(joint: JointPlan, units: UnitSystem): CardBlock[][] {
  const title = 4.6 * linesOf(joint.title, 56) + 10 * (linesOf(joint.tag, 20) - 1);
  const room = SIDE_HEIGHT - SIDE_HEAD;
  const start = startOf(joint, units);
  const ways = ([5, 10] as const)
    .filter((perLine) => perLine === 10 || boxedSteps(joint).length <= 4)
    .flatMap((perLine) => [
      [...start, drawing(joint, true), ...ticks(joint, perLine, true), cautions(joint), record(joint)],
      [...start, { ...drawing(joint, true), newSide: true }, cautions(joint), ...ticks(joint, perLine, true), record(joint)],
      [...start, cautions(joint), drawing(joint, false), ...ticks(joint, perLine, false), record(joint)],
    ]);
  return ways.map((pieces) => pack(pieces, room - title, room)).reduce((best, one) => (one.length < best.length ? one : best));
}

function startOf(joint: JointPlan, units: UnitSystem): CardPiece[] {
  return [
    { block: { kind: 'head' }, height: TEXT_LINE * sum(headTexts(joint, units).map((text) => linesOf(text, 62))), opening: GAP },
    ...joint.reasons.map(
      (reason): CardPiece => ({
        block: { kind: 'reasons', reasons: [reason] },
        height: TEXT_LINE * linesOf(`${says(reason, units)} ${remedy(reason, units)}`, 70) + 0.6,
        opening: 4 + GAP,
      }),
    ),
    { block: { kind: 'bolts' }, height: sum(joint.subgroups.map(({ tightening }) => (tightening?.rotation ? 12.2 : 8.6))), opening: GAP },
    ...(joint.checks.length > 0 ? [checks(joint)] : []),
    ...cardRows(joint, units)
      .flatMap(divided)
      .map((row): CardPiece => ({ block: { kind: 'steps', rows: [row] }, height: rowHeight(row), opening: GAP })),
    ...rounds(joint),
  ];
}

/** Rounds that go another way than the steps say, or whose settings differ from bolt to bolt. */
function rounds({ interaction, rule, boltCount }: JointPlan): CardPiece[] {
  if (!interaction) return [];
  const plain = interaction.rounds.every(({ way }) => way === 'in sequence' || way === 'round');
  if (interaction.mode === 'one setting a round' && (plain || rule.stepWord !== 'pass')) return [];
  const lines =
    interaction.mode === 'one setting a round'
      ? linesOf(roundsText(interaction, boltCount), 78)
      : 2 + sum(interaction.rounds.map(({ settings }) => 1 + sum(settings.map(({ bolts }) => linesOf(positionsText(bolts), 50)))));
  return [{ block: { kind: 'rounds', interaction }, height: TEXT_LINE * lines, opening: GAP }];
}

const divided = (row: CardRow): CardRow[] =>
  Array.from({ length: Math.ceil(row.settings.length / MOST_SETTINGS) }, (_, i) => ({
    ...row,
    settings: row.settings.slice(i * MOST_SETTINGS, (i + 1) * MOST_SETTINGS),
  }));

const rowHeight = ({ settings, order }: CardRow) =>
  (order === 'circular' ? 7.2 : 6.4) +
  sum(settings.map(({ step }) => (step.setting === undefined && step.end.kind !== 'mark at angle' ? 5.6 : 8.4)));

/** A drawing smaller than `least` cannot be read: a ring needs room for its numbers, the more bolts the more. */
function drawing({ layout, boltCount }: JointPlan, overleaf: boolean): CardPiece {
  const least = layout.kind === 'group' ? 46 : Math.min(64, Math.max(50, 42 + boltCount));
  return {
    block: { kind: 'drawing', height: least, overleaf },
    height: least,
    opening: 5 + 2 * GAP,
    most: LARGEST_DRAWING,
    newSide: !overleaf,
  };
}

function ticks(joint: JointPlan, perLine: PerLine, newSide: boolean): CardPiece[] {
  return tickLines(joint, perLine).map((line, at) => ({
    block: { kind: 'ticks', lines: [line], perLine },
    height: tickHeight(perLine, boxedSteps(joint).length),
    opening: 10 + GAP,
    ...(newSide && at === 0 ? { newSide } : {}),
  }));
}

const checks = (joint: JointPlan): CardPiece => ({
  block: { kind: 'checks' },
  height: 5 + 4.4 * Math.ceil(joint.checks.length / 2),
  opening: GAP,
});

const cautions = (joint: JointPlan): CardPiece => ({
  block: { kind: 'cautions' },
  height: 5 + 7 * Math.ceil(joint.cautions.length / 2),
  opening: GAP,
});

/** Three lines of fields, one more for papers, remarks, signatures. */
const record = ({ permits }: JointPlan): CardPiece => ({
  block: { kind: 'record' },
  height: 8.5 * (permits.permit === undefined && permits.gasTest === undefined ? 4 : 5) + 13,
  opening: GAP,
});
