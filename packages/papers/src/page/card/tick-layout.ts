import type { JointPlan, StepPlan } from '@clampwright/core';

export interface Cell {
  readonly bolt: number;
  readonly turn: number;
  /** tightened together with the one before */
  readonly joined: boolean;
}

/** Ten bolts a line; five with larger boxes where there is room. */
export type PerLine = 5 | 10;

/** The tightening list in lines; bolts of one turn never part. */
export function tickLines({ sequence }: JointPlan, perLine: PerLine): Cell[][] {
  const lines: Cell[][] = [];
  for (const [at, bolts] of sequence.list.entries()) {
    const cells = bolts.map((bolt, i): Cell => ({ bolt, turn: at + 1, joined: i > 0 }));
    const line = lines.at(-1);
    if (line && line.length + cells.length <= perLine) line.push(...cells);
    else lines.push(cells);
  }
  return lines;
}

/** The steps a bolt gets a box for: those in the tightening sequence. A circular one is ticked as a whole on side 1. */
export const boxedSteps = ({ subgroups }: JointPlan): readonly StepPlan[] =>
  subgroups
    .map(({ tightening }) => (tightening?.steps ?? []).filter(({ order }) => order === 'sequence'))
    .reduce<readonly StepPlan[]>((most, one) => (one.length > most.length ? one : most), []);

/** Height of a line of cells on paper, mm: turns, number, boxes, four beside each other. */
export const tickHeight = (perLine: PerLine, boxes: number): number => (perLine === 5 ? 12.6 : 9.4 + 4.4 * Math.ceil(boxes / 4));
