import type { CautionCode, JointPlan } from '@clampwright/core';
import type { UnitSystem } from '@clampwright/words';
import type { CardBlock, CardPiece } from './card-block.ts';
import { type CardRow, cardRows } from './card-rows.ts';
import type { CardSheet } from './card-sheet.ts';
import { pack } from './pack.ts';
import { PAGE_SHEET } from './page-sheet.ts';
import { boxedSteps, type PerLine, tickLines } from './tick-layout.ts';

/** Settings of one step that stay together, where a joint has very many subgroups. */
const MOST_SETTINGS = 12;

/**
 * Spreads a card over as few sides as hold it. Drawing beside the steps and cautions overleaf, drawing and cautions on a side of
 * their own, or drawing with the boxes, before the cautions or after them; large boxes or small: the first of these with the fewest sides, and of those the one that leaves
 * no block alone on a side.
 */
export function layCard(joint: JointPlan, units: UnitSystem, sheet: CardSheet = PAGE_SHEET): CardBlock[][] {
  const piece = (block: CardBlock, more: Partial<CardPiece> = {}): CardPiece => ({
    block,
    height: sheet.height(block, joint, units),
    opening: sheet.opening(block.kind),
    ...more,
  });
  const record = piece({ kind: 'record' });
  const cautions = cautionPieces(joint.cautions, piece, sheet.room);
  // a drawing smaller than the least cannot be read: a ring needs room for its numbers, the more bolts the more
  const drawing = (overleaf: boolean, more: Partial<CardPiece> = {}) =>
    piece(
      { kind: 'drawing', height: sheet.leastDrawing(joint), overleaf },
      { most: sheet.mostDrawing, ...(overleaf ? {} : { newSide: true }), ...more },
    );
  const ticks = (perLine: PerLine, newSide: boolean) =>
    tickLines(joint, perLine).map((line, at) => piece({ kind: 'ticks', lines: [line], perLine }, newSide && at === 0 ? { newSide } : {}));
  const start = startBlocks(joint, units).map((block) => piece(block));
  const ways = sheet.perLine
    .filter((perLine) => perLine === 10 || boxedSteps(joint).length <= 4)
    .flatMap((perLine) => [
      [...start, drawing(true), ...ticks(perLine, true), ...cautions, record],
      [...start, drawing(true, { newSide: true }), ...cautions, ...ticks(perLine, true), record],
      [...start, ...cautions, drawing(false), ...ticks(perLine, false), record],
      [...start, drawing(false, { newSide: false }), ...ticks(perLine, false), ...cautions, record],
    ]);
  const laid = ways.map((pieces) => pack(pieces, sheet.room - sheet.firstHead(joint), sheet.room));
  return laid.reduce((best, one) => (one.length < best.length || (one.length === best.length && lonely(one) < lonely(best)) ? one : best));
}

/** All cautions together, or in as few parts as sides hold them: two languages on a small card are long. */
function cautionPieces(codes: readonly CautionCode[], piece: (block: CardBlock) => CardPiece, room: number): CardPiece[] {
  for (let parts = 1; ; parts += 1) {
    const each = Math.ceil(codes.length / parts);
    const pieces = Array.from({ length: parts }, (_, i) => piece({ kind: 'cautions', codes: codes.slice(i * each, (i + 1) * each) }));
    if (each <= 1 || pieces.every(({ height, opening }) => height + opening <= room)) return pieces;
  }
}

const lonely = (sides: readonly (readonly CardBlock[])[]) => sides.filter(({ length }) => length === 1).length;

const startBlocks = (joint: JointPlan, units: UnitSystem): CardBlock[] => [
  { kind: 'head' },
  ...joint.reasons.map((reason): CardBlock => ({ kind: 'reasons', reasons: [reason] })),
  { kind: 'bolts' },
  ...(joint.checks.length > 0 ? [{ kind: 'checks' } as const] : []),
  ...cardRows(joint, units)
    .flatMap(divided)
    .map((row): CardBlock => ({ kind: 'steps', rows: [row] })),
  ...roundBlocks(joint),
];

/** Rounds that go another way than the steps say, or whose settings differ from bolt to bolt. */
function roundBlocks({ interaction, rule }: JointPlan): CardBlock[] {
  if (!interaction) return [];
  const plain = interaction.rounds.every(({ way }) => way === 'in sequence' || way === 'round');
  return interaction.mode === 'one setting a round' && (plain || rule.stepWord !== 'pass') ? [] : [{ kind: 'rounds', interaction }];
}

const divided = (row: CardRow): CardRow[] =>
  Array.from({ length: Math.ceil(row.settings.length / MOST_SETTINGS) }, (_, i) => ({
    ...row,
    settings: row.settings.slice(i * MOST_SETTINGS, (i + 1) * MOST_SETTINGS),
  }));
