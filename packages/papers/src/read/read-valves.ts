import { degrees, type Notice, notice, type Tool, type ValveTask } from '@clampwright/core';
import { z } from 'zod';
import { load, type OpenFile } from './open-file.ts';
import { stated } from './stated.ts';
import { checkValue, readYaml } from './yaml-file.ts';
import { between, quantity, word } from './yaml-values.ts';

const valveSchema = z.strictObject({
  tag: word,
  way: z.enum(['opening', 'closing']),
  opens: z.enum(['clockwise', 'counter-clockwise']).optional(),
  tool: word,
  seat: quantity('length'),
  stem: quantity('length'),
  differential: quantity('stress'),
  line: quantity('stress'),
  'valve-factor': between(0.1, 1).default(0.4),
  packing: quantity('force'),
  'stem-pitch': quantity('length'),
  starts: between(1, 6, true).default(1),
  thread: z.enum(['trapezoidal', 'ACME']).default('trapezoidal'),
  'stem-friction': between(0.05, 0.5).default(0.15),
  stroke: quantity('length'),
  wheel: quantity('length').optional(),
  'owner-limit': quantity('torque').optional(),
  permission: word.optional(),
  'thermal-binding': z.boolean().default(false),
});
const fileSchema = z.strictObject({ valves: z.array(z.unknown()).default([]) });

const HALF_ANGLE = { trapezoidal: degrees(15), ACME: degrees(14.5) } as const;

/** The gate valves of valves.yaml, one by one; a faulty one is left out and said. */
export function readValves(
  open: OpenFile,
  file: string,
  tools: readonly Tool[],
): { readonly valves: ValveTask[]; readonly notices: Notice[] } {
  const bytes = load(open, file);
  const read = bytes.ok ? readYaml(bytes.value, file, fileSchema) : bytes;
  if (!read.ok) return { valves: [], notices: [...read.notices] };
  const { value, at, notices: remarks } = read.value;
  const notices: Notice[] = [...remarks];
  const bySerial = new Map(tools.map((tool) => [tool.serial, tool]));
  const valves = value.valves.flatMap((given, index): ValveTask[] => {
    const entry = checkValue(valveSchema, given, at, ['valves', index]);
    if (!entry.ok) {
      notices.push(...entry.notices);
      return [];
    }
    const tool = bySerial.get(entry.value.tool);
    if (!tool) {
      notices.push(notice('tool-unknown', { serial: entry.value.tool }, at(['valves', index, 'tool'])));
      return [];
    }
    return [taskOf(entry.value, tool)];
  });
  return { valves, notices };
}

function taskOf(entry: z.output<typeof valveSchema>, { chart }: Tool): ValveTask {
  const { tag, way, seat, stem, differential, line, packing, stroke, thread, starts } = entry;
  return {
    tag,
    way,
    chart,
    stroke,
    load: { seat, stem, differential, line, packing, valveFactor: entry['valve-factor'] },
    thread: { outside: stem, pitch: entry['stem-pitch'], starts, halfAngle: HALF_ANGLE[thread] },
    stemFriction: entry['stem-friction'],
    thermalBinding: entry['thermal-binding'],
    ...stated<Pick<ValveTask, 'opens' | 'wheel' | 'ownerLimit' | 'permission'>>({
      opens: entry.opens,
      wheel: entry.wheel,
      ownerLimit: entry['owner-limit'],
      permission: entry.permission,
    }),
  };
}
