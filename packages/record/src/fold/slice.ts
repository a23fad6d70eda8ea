import { field, positions, z } from '../entry/field.ts';

/** What one joint's work is judged by: the part of an issued plan that an entry can contradict. */
export const slice = z.strictObject({
  joint: field.joint,
  tag: field.label,
  /** of the joint's whole card, which lies beside the log as an attachment */
  card: field.hash,
  bolts: field.position,
  /** bolts in the order they are tightened; a line holds those that synchronous tools take together */
  sequence: z.array(positions),
  /** bolts that may be ahead of the sequence because several tools work at once */
  toolsAtOnce: field.position,
  datum: z.optional(z.strictObject({ boltOne: field.text, direction: z.enum(['clockwise', 'counter-clockwise']), viewedFrom: field.text })),
  steps: z.array(
    z.strictObject({
      step: field.label,
      /** whether the bolts follow the sequence; a circular round does not */
      ordered: field.yes,
      /** a round that is gone until no nut moves takes a bolt more than once */
      repeats: field.yes,
      settings: z.array(z.strictObject({ tool: field.label, setting: field.label, positions })),
    }),
  ),
});
export type Slice = Readonly<z.infer<typeof slice>>;
