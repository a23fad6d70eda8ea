import {
  findGrade,
  findThread,
  type judgeGaps,
  type judgePreInstallation,
  type judgeRotationalCapacity,
  type judgeShots,
  judgeSuitability,
  type Newton,
  type NewtonMillimetre,
  type Notice,
  type Outcome,
  strengthAt,
  stressArea,
} from '@clampwright/core';
import { z } from 'zod';
import { stated } from './stated.ts';
import { label, quantity, word } from './yaml-values.ts';

/** A suitability test as it is written down. */
export const suitability = z.strictObject({
  lot: label,
  size: word,
  grade: word,
  system: z.enum(['HR', 'HV']),
  preload: quantity('force'),
  'clamped-thickness': quantity('length'),
  assemblies: z
    .array(
      z.strictObject({
        torque: quantity('torque'),
        'greatest-force': quantity('force').optional(),
        'first-rotation': quantity('angle').optional(),
        'second-rotation': quantity('angle').optional(),
      }),
    )
    .max(1000),
});
/** One judged test: what it was of, and what it says. */
export type JudgedTest =
  | (OfLot & { readonly kind: 'suitability'; readonly verdict: ValueOf<ReturnType<typeof judgeSuitability>> })
  | (OfLot & { readonly kind: 'verification'; readonly verdict: ValueOf<ReturnType<typeof judgePreInstallation>> })
  | (OfLot & { readonly kind: 'rotational-capacity'; readonly verdict: ValueOf<ReturnType<typeof judgeRotationalCapacity>> })
  | {
      readonly kind: 'shots';
      readonly of: string;
      /** what the tool was set to, and what it was held against, as far as it was said */
      readonly setting?: string;
      readonly against?: string;
      readonly expected: NewtonMillimetre;
      readonly verdict: ValueOf<ReturnType<typeof judgeShots>>;
    }
  | {
      readonly kind: 'charges';
      readonly of: string;
      /** bolts that the next charge does at least, with a confidence */
      readonly verdict: {
        readonly charges: number;
        readonly least: number;
        readonly confidence: number;
        readonly notices: readonly Notice[];
      };
    }
  | { readonly kind: 'gaps'; readonly of: string; readonly verdict: ValueOf<ReturnType<typeof judgeGaps>> };
interface OfLot {
  readonly of: string;
  /** size, grade and system of the fasteners, as far as it was said */
  readonly designation?: string;
}
type ValueOf<O> = Extract<O, { readonly ok: true }> extends { readonly value: infer T } ? T : never;

export const carried = <T>(outcome: Outcome<T>, into: (value: T) => JudgedTest): Outcome<JudgedTest> =>
  outcome.ok ? { ok: true, value: into(outcome.value) } : outcome;

export function judgedSuitability(entry: z.output<typeof suitability>): Outcome<JudgedTest> {
  const { lot, size, grade, system, preload, assemblies } = entry;
  const [thread, found] = [findThread(size), findGrade(grade)];
  if (!thread.ok) return thread;
  if (!found.ok) return found;
  const strength = strengthAt(found.value, thread.value.diameter, thread.value.designation);
  if (!strength.ok) return strength;
  const { diameter, pitch } = thread.value;
  const verdict = judgeSuitability({
    lot,
    diameter,
    preload,
    system,
    ultimate: (found.value.nominal ?? strength.value).tensile,
    stressArea: stressArea(diameter, pitch),
    ratio: entry['clamped-thickness'] / diameter,
    assemblies: assemblies.map((one) => ({
      torque: one.torque as NewtonMillimetre,
      ...stated<{ greatestForce: Newton; firstRotation: number; secondRotation: number }>({
        greatestForce: one['greatest-force'],
        firstRotation: one['first-rotation'],
        secondRotation: one['second-rotation'],
      }),
    })) as never,
  });
  return carried(verdict, (value) => ({ kind: 'suitability', of: lot, designation: `${size} ${grade} ${system}`, verdict: value }));
}
