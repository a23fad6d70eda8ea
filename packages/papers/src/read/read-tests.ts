import {
  findGrade,
  findThread,
  judgeGaps,
  judgePreInstallation,
  judgeRotationalCapacity,
  judgeShots,
  judgeSuitability,
  type Newton,
  type NewtonMillimetre,
  type Notice,
  type Outcome,
  strengthAt,
  stressArea,
} from '@clampwright/core';
import { z } from 'zod';
import { load, type OpenFile } from './open-file.ts';
import { stated } from './stated.ts';
import { checkValue, readYaml } from './yaml-file.ts';
import { quantity, word } from './yaml-values.ts';

const suitability = z.strictObject({
  lot: word,
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
const verification = z.strictObject({
  lot: word,
  minimum: quantity('force'),
  tensions: z.array(quantity('force')).max(1000),
  torques: z.array(quantity('torque')).max(1000).default([]),
});
const shots = z.strictObject({
  tool: word,
  expected: quantity('torque'),
  limit: quantity('share'),
  readings: z.array(quantity('torque')).max(10_000),
});
const gaps = z.strictObject({
  joint: word,
  allowed: quantity('length').optional(),
  passes: z.array(z.array(quantity('length'))).max(100),
});
const capacity = z.strictObject({
  lot: word,
  minimum: quantity('force'),
  diameter: quantity('length'),
  assemblies: z
    .array(
      z.strictObject({
        torque: quantity('torque'),
        tension: quantity('force').optional(),
        'tension-after-turn': quantity('force').optional(),
        damaged: z.boolean().default(false),
      }),
    )
    .max(1000),
});
const fileSchema = z.strictObject({
  'rotational-capacity': z.array(z.unknown()).default([]),
  suitability: z.array(z.unknown()).default([]),
  verification: z.array(z.unknown()).default([]),
  shots: z.array(z.unknown()).default([]),
  gaps: z.array(z.unknown()).default([]),
});

/** One judged test: what it was of, and what it says. */
export type JudgedTest =
  | { readonly kind: 'suitability'; readonly of: string; readonly verdict: ValueOf<ReturnType<typeof judgeSuitability>> }
  | { readonly kind: 'verification'; readonly of: string; readonly verdict: ValueOf<ReturnType<typeof judgePreInstallation>> }
  | { readonly kind: 'rotational-capacity'; readonly of: string; readonly verdict: ValueOf<ReturnType<typeof judgeRotationalCapacity>> }
  | { readonly kind: 'shots'; readonly of: string; readonly verdict: ValueOf<ReturnType<typeof judgeShots>> }
  | { readonly kind: 'gaps'; readonly of: string; readonly verdict: ValueOf<ReturnType<typeof judgeGaps>> };
type ValueOf<O> = Extract<O, { readonly ok: true }> extends { readonly value: infer T } ? T : never;

/** Measured series of a YAML file, judged: suitability tests, pre-installation verifications, shots of tools, gaps of flanges. */
export function readTests(open: OpenFile, file: string): { readonly judged: JudgedTest[]; readonly notices: Notice[] } {
  const bytes = load(open, file);
  const read = bytes.ok ? readYaml(bytes.value, file, fileSchema) : bytes;
  if (!read.ok) return { judged: [], notices: [...read.notices] };
  const { value, at, notices: remarks } = read.value;
  const notices: Notice[] = [...remarks];
  const judged: JudgedTest[] = [];
  const each = <S extends z.ZodType>(kind: keyof typeof value, schema: S, judge: (entry: z.output<S>) => Outcome<JudgedTest>) => {
    for (const [index, given] of value[kind].entries()) {
      const entry = checkValue(schema, given, at, [kind, index]);
      const found = entry.ok ? judge(entry.value) : entry;
      if (found.ok) judged.push(found.value);
      else notices.push(...found.notices.map((one) => (one.place ? one : { ...one, place: at([kind, index]) })));
    }
  };
  each('suitability', suitability, judgedSuitability);
  each('verification', verification, ({ lot, minimum, tensions, torques }) =>
    carried(judgePreInstallation({ lot, minimum, tensions, torques }), (verdict) => ({ kind: 'verification', of: lot, verdict })),
  );
  each('rotational-capacity', capacity, ({ lot, minimum, diameter, assemblies }) =>
    carried(
      judgeRotationalCapacity({
        lot,
        minimum,
        diameter,
        assemblies: assemblies.map(({ torque, damaged, ...one }) => ({
          torque,
          damaged,
          ...stated<{ tension: Newton; tensionAfterTurn: Newton }>({ tension: one.tension, tensionAfterTurn: one['tension-after-turn'] }),
        })),
      }),
      (verdict) => ({ kind: 'rotational-capacity', of: lot, verdict }),
    ),
  );
  each('shots', shots, ({ tool, expected, limit, readings }) =>
    carried(judgeShots({ expected, limit, readings }), (verdict) => ({ kind: 'shots', of: tool, verdict })),
  );
  each('gaps', gaps, ({ joint, allowed, passes }) =>
    carried(
      judgeGaps(
        passes.map((points, pass) => ({ pass: pass + 1, gaps: points })),
        allowed,
      ),
      (verdict) => ({ kind: 'gaps', of: joint, verdict }),
    ),
  );
  return { judged, notices };
}

const carried = <T>(outcome: Outcome<T>, into: (value: T) => JudgedTest): Outcome<JudgedTest> =>
  outcome.ok ? { ok: true, value: into(outcome.value) } : outcome;

function judgedSuitability(entry: z.output<typeof suitability>): Outcome<JudgedTest> {
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
  return carried(verdict, (value) => ({ kind: 'suitability', of: lot, verdict: value }));
}
