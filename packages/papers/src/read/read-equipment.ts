import type { Battery, CivilDate, Notice } from '@clampwright/core';
import type { ReadTool } from '@clampwright/record';
import { headingMemory } from './heading-memory.ts';
import { jobSchema } from './job-yaml.ts';
import { load, type OpenFile } from './open-file.ts';
import { readTools } from './read-tools.ts';
import { readYaml } from './yaml-file.ts';

export interface ReadEquipment {
  readonly equipment: readonly ReadTool[];
  readonly batteries: readonly Battery[];
  readonly notices: readonly Notice[];
}

/** Tools and batteries of a job folder, by the certificates that count on the day of the work, for the books of the yard. */
export function readEquipment(open: OpenFile): ReadEquipment {
  const bytes = load(open, 'job.yaml');
  const head = bytes.ok ? readYaml(bytes.value, 'job.yaml', jobSchema) : bytes;
  if (!head.ok) return { equipment: [], batteries: [], notices: head.notices };
  const { value, notices } = head.value;
  const read = readToolStore(open, value.tools, value['work-date']);
  return { ...read, notices: [...notices, ...read.notices] };
}

/** Tools and batteries of one file, by the certificates that count on a day. */
export function readToolStore(open: OpenFile, file: string, day: CivilDate): ReadEquipment {
  const notices: Notice[] = [];
  const memory = headingMemory(open);
  const { tools, batteries } = readTools(open, file, day, memory, notices);
  const equipment = tools.flatMap((tool): ReadTool[] => {
    const chart = load(open, tool.place!.file!);
    if (!chart.ok) return [];
    const { photo } = tool.chart.certificate;
    const picture = photo && load(open, photo.file);
    return [{ tool, chart: chart.value, ...(photo && picture?.ok ? { photo: { file: photo.file, bytes: picture.value } } : {}) }];
  });
  return { equipment, batteries, notices: [...notices, ...memory.notices()] };
}
