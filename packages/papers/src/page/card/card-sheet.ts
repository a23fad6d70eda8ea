import type { JointPlan } from '@clampwright/core';
import type { UnitSystem } from '@clampwright/words';
import type { CardBlock } from './card-block.ts';
import type { PerLine } from './tick-layout.ts';

/** The paper a card is laid on: how much it holds, and what each block takes there, mm. */
export interface CardSheet {
  /** under the head of any further side */
  readonly room: number;
  /** what the head of the first side takes more */
  readonly firstHead: (joint: JointPlan) => number;
  readonly height: (block: CardBlock, joint: JointPlan, units: UnitSystem) => number;
  /** taken once more where a block of this kind opens on a side */
  readonly opening: (kind: CardBlock['kind']) => number;
  readonly leastDrawing: (joint: JointPlan) => number;
  readonly mostDrawing: number;
  /** boxes a line to try, the larger boxes first */
  readonly perLine: readonly PerLine[];
}
