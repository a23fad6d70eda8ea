import type { TighteningList } from '@clampwright/core';

export interface Turn {
  readonly bolt: number;
  readonly turn: number;
}

/** Which bolt comes at which turn; bolts of synchronous tools share one. */
export const turnsOf = (list: TighteningList): Turn[] => list.flatMap((bolts, at) => bolts.map((bolt) => ({ bolt, turn: at + 1 })));

/** Where not every turn fits, this many are shown: three quartets make the pattern plain. */
export const FIRST_TURNS = 12;

/** Every nth number is written, so that neighbours keep apart; the first always. */
export function everyNth(count: number, pitch: number, width: number): (bolt: number) => boolean {
  const step = [1, 2, 5, 10, 20].find((n) => n * pitch >= width) ?? 40;
  // and clear of bolt 1, whose mark needs room
  const clear = Math.ceil(0.7 * step);
  return (bolt) => bolt === 1 || step === 1 || (bolt % step === 0 && bolt - 1 >= clear && count + 1 - bolt >= clear);
}
