import type { EndSignal } from '@clampwright/core';
import { field, z } from './field.ts';

const ENDS = [
  'firm contact',
  'stall',
  'mark at angle',
  'spline off',
  'outer socket stops',
  'indicator starts to flatten',
  'feeler refused',
  'no nut moves',
] as const satisfies readonly EndSignal['kind'][];

/** What is told of a bolt, or of several, tightened in a step. */
export const tighteningFields = {
  joint: field.joint,
  step: field.label,
  /** of the card in hand: says which issue of the plan the crew worked to */
  card: z.optional(field.hash),
  tool: z.optional(field.label),
  setting: z.optional(field.label),
  battery: z.optional(field.label),
  end: z.enum(ENDS),
};

/** Joint, tool and battery that a tightening is about, of one bolt or of several. */
export const tighteningAbout = ({
  joint,
  tool,
  battery,
}: {
  readonly joint: string;
  readonly tool?: string | undefined;
  readonly battery?: string | undefined;
}) => ({
  joint: [joint],
  ...(tool === undefined ? {} : { tool: [tool] }),
  ...(battery === undefined ? {} : { battery: [battery] }),
});
