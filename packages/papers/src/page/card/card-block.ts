import type { CautionCode, InteractionPlan, Notice } from '@clampwright/core';
import type { CardRow } from './card-rows.ts';
import type { Cell, PerLine } from './tick-layout.ts';

/** What a card is put together from. */
export type CardBlock =
  | { readonly kind: 'head' }
  | { readonly kind: 'reasons'; readonly reasons: readonly Notice[] }
  | { readonly kind: 'bolts' }
  | { readonly kind: 'steps'; readonly rows: readonly CardRow[] }
  | { readonly kind: 'rounds'; readonly interaction: InteractionPlan }
  | { readonly kind: 'drawing'; readonly height: number; readonly overleaf: boolean }
  | { readonly kind: 'ticks'; readonly lines: readonly (readonly Cell[])[]; readonly perLine: PerLine }
  | { readonly kind: 'checks' }
  | { readonly kind: 'cautions'; readonly codes: readonly CautionCode[] }
  | { readonly kind: 'record' };

/** A block, or one part of it that may stand on a side of its own, with the height it takes there, mm. */
export interface CardPiece {
  readonly block: CardBlock;
  readonly height: number;
  /** taken once more when it opens a block of its kind on a side: a key above, the room between blocks */
  readonly opening: number;
  /** begins a new side, unless the side is empty */
  readonly newSide?: boolean;
  /** may grow into what its side has left, up to this */
  readonly most?: number;
}

/** Pieces of one block, joined again where they came to stand on one side. */
export function join(a: CardBlock, b: CardBlock): CardBlock | undefined {
  if (a.kind === 'reasons' && b.kind === 'reasons') return { ...a, reasons: [...a.reasons, ...b.reasons] };
  if (a.kind === 'steps' && b.kind === 'steps') return { ...a, rows: [...a.rows, ...b.rows] };
  if (a.kind === 'ticks' && b.kind === 'ticks') return { ...a, lines: [...a.lines, ...b.lines] };
  return undefined;
}
