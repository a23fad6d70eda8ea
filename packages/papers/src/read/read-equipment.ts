import type { Battery, Notice, Tool } from '@clampwright/core';
import { headingMemory } from './heading-memory.ts';
import { jobSchema } from './job-yaml.ts';
import { load, type OpenFile } from './open-file.ts';
import { readTools } from './read-tools.ts';
import { readYaml } from './yaml-file.ts';

/** A tool with the bytes of its chart, and of the picture of its certificate. */
export interface Equipment {
  readonly tool: Tool;
  readonly chart: Uint8Array;
  readonly photo?: { readonly file: string; readonly bytes: Uint8Array };
}

/** Tools and batteries of a job folder, by the certificates that count on the day of the work, for the books of the yard. */
export function readEquipment(open: OpenFile): {
  readonly equipment: readonly Equipment[];
  readonly batteries: readonly Battery[];
  readonly notices: readonly Notice[];
} {
  const bytes = load(open, 'job.yaml');
  const head = bytes.ok ? readYaml(bytes.value, 'job.yaml', jobSchema) : bytes;
  if (!head.ok) return { equipment: [], batteries: [], notices: head.notices };
  const { value } = head.value;
  const notices: Notice[] = [...head.value.notices];
  const memory = headingMemory(open);
  const { tools, batteries } = readTools(open, value.tools, value['work-date'], memory, notices);
  const equipment = tools.flatMap((tool): Equipment[] => {
    const chart = load(open, tool.place!.file!);
    if (!chart.ok) return [];
    const { photo } = tool.chart.certificate;
    const picture = photo && load(open, photo.file);
    return [{ tool, chart: chart.value, ...(photo && picture?.ok ? { photo: { file: photo.file, bytes: picture.value } } : {}) }];
  });
  return { equipment, batteries, notices: [...notices, ...memory.notices()] };
}
