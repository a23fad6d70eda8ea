import {
  judgeGaps,
  judgePreInstallation,
  judgeRotationalCapacity,
  judgeShots,
  type Newton,
  type Notice,
  type Outcome,
} from '@clampwright/core';
import { z } from 'zod';
import { type HeadingMemory, headingMemory } from './heading-memory.ts';
import { carried, type JudgedTest, judgedSuitability, suitability } from './judged-test.ts';
import { load, type OpenFile } from './open-file.ts';
import { readSeries } from './read-series.ts';
import { stated } from './stated.ts';
import { checkValue, readYaml } from './yaml-file.ts';
import { quantity, word } from './yaml-values.ts';

const verification = z.strictObject({
  lot: word,
  designation: word.optional(),
  minimum: quantity('force'),
  tensions: z.array(quantity('force')).max(1000),
  torques: z.array(quantity('torque')).max(1000).default([]),
});
const shots = z.strictObject({
  tool: word,
  setting: word.optional(),
  /** transducer or calibrator, by its own number */
  against: word.optional(),
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
  designation: word.optional(),
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

/** Files that are tables, by their names. */
const TABLE = /\.(csv|tsv|txt|xls[xm])(#.*)?$/i;

/** Measured series of a YAML file, or of a table (see `readSeries`), judged: suitability tests, pre-installation verifications, shots of tools, gaps of flanges. */
export function readTests(
  open: OpenFile,
  file: string,
  memory: HeadingMemory = headingMemory(open),
): { readonly judged: JudgedTest[]; readonly notices: Notice[] } {
  if (TABLE.test(file)) return readSeries(open, file, memory);
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
  each('verification', verification, ({ lot, minimum, tensions, torques, designation }) =>
    carried(judgePreInstallation({ lot, minimum, tensions, torques }), (verdict) => ({
      kind: 'verification',
      of: lot,
      ...stated<{ designation: string }>({ designation }),
      verdict,
    })),
  );
  each('rotational-capacity', capacity, ({ lot, minimum, diameter, assemblies, designation }) =>
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
      (verdict) => ({ kind: 'rotational-capacity', of: lot, ...stated<{ designation: string }>({ designation }), verdict }),
    ),
  );
  each('shots', shots, ({ tool, expected, limit, readings, setting, against }) =>
    carried(judgeShots({ expected, limit, readings }), (verdict) => ({
      kind: 'shots',
      of: tool,
      expected,
      ...stated<{ setting: string; against: string }>({ setting, against }),
      verdict,
    })),
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
