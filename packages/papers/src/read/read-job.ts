import type { Job, Notice } from '@clampwright/core';
import { type HeadingMeans, headingMemory } from './heading-memory.ts';
import { jobSchema } from './job-yaml.ts';
import { load, type OpenFile } from './open-file.ts';
import { readJoints } from './read-joints.ts';
import { readLots } from './read-lots.ts';
import { addMembers } from './read-members.ts';
import { readTools } from './read-tools.ts';
import { stated } from './stated.ts';
import { readYaml } from './yaml-file.ts';

export interface ReadJob {
  /** absent only when job.yaml itself cannot be used */
  readonly job?: Job;
  readonly notices: readonly Notice[];
  /** text of the mapping file, where `means` told something new: it belongs into the job folder */
  readonly mapping?: string;
}

export interface ReadOptions {
  /** what headings mean, said by a person now */
  readonly means?: readonly HeadingMeans[];
}

/**
 * Reads a job folder: job.yaml, the joint list, tools.yaml and every chart it names, members.yaml where there is one. All faults of all files at once; what is
 * faulty is left out and said, what is good is kept.
 */
export function readJob(open: OpenFile, { means = [] }: ReadOptions = {}): ReadJob {
  const bytes = load(open, 'job.yaml');
  if (!bytes.ok) return { notices: bytes.notices };
  const head = readYaml(bytes.value, 'job.yaml', jobSchema);
  if (!head.ok) return { notices: head.notices };
  const { value } = head.value;
  const notices: Notice[] = [...head.value.notices];
  const memory = headingMemory(open, means);
  const lots = readLots(open, head.value, memory, notices);
  const list = load(open, value.joints);
  const joints = list.ok
    ? readJoints(list.value, value.joints, value.units, memory, value['rule-set'])
    : { joints: [], notices: list.notices };
  notices.push(...joints.notices);
  const withMembers = addMembers(open, value.members, joints.joints, notices);
  const { tools, batteries, charger } = readTools(open, value.tools, value['work-date'], memory, notices);
  const job: Job = {
    title: value.title,
    site: value.site,
    workDate: value['work-date'],
    units: value.units,
    conditions: {
      wet: value.conditions.wet,
      atHeight: value.conditions['at-height'],
      ...stated<Pick<Job['conditions'], 'zone'>>({ zone: value.conditions.zone }),
    },
    people: value.people.map((person) => ({
      name: person.name,
      role: person.role,
      ...stated<Pick<Job['people'][number], 'qualification' | 'qualifiedUntil'>>({
        qualification: person.qualification,
        qualifiedUntil: person['qualified-until'],
      }),
    })),
    joints: withMembers,
    tools,
    lots,
    batteries,
    crews: value.crews,
    shiftMinutes: 60 * value['shift-hours'],
    ...stated<Pick<Job, 'executionClass' | 'charger'>>({ executionClass: value['execution-class'], charger }),
  };
  const mapping = memory.text();
  return { job, notices: [...notices, ...memory.notices()], ...(mapping === undefined ? {} : { mapping }) };
}
