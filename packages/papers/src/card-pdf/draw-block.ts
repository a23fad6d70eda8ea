import type { JointPlan } from '@clampwright/core';
import type { UnitSystem } from '@clampwright/words';
import type { CardBlock } from '../page/card/card-block.ts';
import type { Pen } from './pen.ts';

/** Draws a block at the pen and gives the height it took, mm: with a canvas that draws nothing, it measures. */
export type DrawBlock<B extends CardBlock> = (pen: Pen, block: B, joint: JointPlan, units: UnitSystem) => number;
