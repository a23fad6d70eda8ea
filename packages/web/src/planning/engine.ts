import {
  type Job,
  type JointPlan,
  type JointRounds,
  jointMemory,
  type Notice,
  type Plan,
  planInteraction,
  planJob,
  type RoundsMemory,
  roundsOf,
  simulatedJob,
  type WantedRounds,
  wantedRounds,
  withRounds,
} from '@clampwright/core';
import { changeYaml, yamlOf } from '@clampwright/papers/edit';
import {
  asCsv,
  type HeadingMeans,
  issuedValves,
  joinedMappings,
  jointHeadings,
  MAPPING_FILE,
  type OpenFile,
  readJob,
} from '@clampwright/papers/read';
import { type IssuedValve, utf8 } from '@clampwright/record';
import { ENGLISH_WORDS, type Language, loadWords } from '@clampwright/words';
import { comparePlans } from './compare-plans.ts';
import { type Departure, departuresOf } from './departures.ts';
import { planView } from './plan-view.ts';
import type { JointChange, ListHead, PlanView, Way } from './view.ts';
import { waysOut } from './ways-out.ts';

/** Kinds of joints whose rounds are kept from one edit to the next. */
const MOST_KINDS = 400;

/** Where the rounds of one joint are computed; beside the engine in a page, so that typing never waits for them. */
export type Rounds = (job: Job, wanted: WantedRounds) => Promise<JointRounds>;

/** Reads and plans the files of one draft again and again, and answers questions about the plan it has. */
export interface Engine {
  /** other files in place of those it has; says how the plan stands */
  readonly plan: (put: readonly (readonly [string, Uint8Array])[], drop: readonly string[], means?: readonly HeadingMeans[]) => PlanView;
  /** tells the plan in another language from now on */
  readonly speak: (language: Language) => Promise<void>;
  /** computes what is open of the rounds, and says how the plan stands whenever some are known */
  readonly rounds: (told: (view: PlanView) => void) => Promise<void>;
  readonly joint: (tag: string) => JointPlan | undefined;
  /** the plan with its rounds, the job and the valves, as they are issued */
  readonly whole: () => Promise<Whole | undefined>;
  readonly simulated: () => Promise<ReturnType<typeof simulatedJob> | undefined>;
  /** what a named person approves before the plan is issued */
  readonly departures: () => Promise<readonly Departure[]>;
  readonly ways: (code: string, tags: readonly string[]) => readonly Way[];
  /** what is otherwise in the plan at hand than in one that was issued, or that other files give */
  readonly compare: (other: Uint8Array | ReadonlyMap<string, Uint8Array>) => Promise<readonly JointChange[] | undefined>;
  /**
   * a joint list out of a file, for the draft at hand or for a new one: as CSV, with what its columns were understood as, and what was not;
   * a new one is read with the mapping files that are remembered
   */
  readonly list: (bytes: Uint8Array, file: string, means: readonly HeadingMeans[], into: 'draft' | readonly Uint8Array[]) => ReadList;
}

/** What the files of a draft come to. */
export interface Whole {
  readonly job: Job;
  readonly plan: Plan;
  readonly valves: readonly IssuedValve[];
}

export interface ReadList {
  /** none where it is no list that could be taken */
  readonly csv: Uint8Array | undefined;
  readonly head: ListHead | undefined;
  readonly joints: readonly { readonly tag: string; readonly bolts: number }[];
  readonly notices: readonly Notice[];
  readonly mapping: string | undefined;
}

export function openEngine(compute: Rounds = async (job, { joint, planned }) => roundsOf(job, joint, planned)): Engine {
  const files = new Map<string, Uint8Array>();
  const memory: RoundsMemory = new Map();
  const joints = jointMemory();
  let words = ENGLISH_WORDS;
  let turn = 0;
  let read: Whole | undefined;
  let rest: { readonly notices: readonly Notice[]; readonly list: ListHead | undefined; readonly mapping: string | undefined };
  rest = { notices: [], list: undefined, mapping: undefined };

  /** the plan with its rounds, as far as they are known */
  const current = (): Plan | undefined => read && withRounds(read.job, read.plan, memory);
  const view = (): PlanView =>
    planView({ ...rest, plan: current(), roundsOpen: read ? wantedRounds(read.job, read.plan, memory).length : 0 }, words);
  const rounds = async (told: (view: PlanView) => void) => {
    const mine = turn;
    for (;;) {
      const here = read;
      const [wanted] = here ? wantedRounds(here.job, here.plan, memory) : [];
      if (!here || !wanted || turn !== mine) return;
      const found = await compute(here.job, wanted);
      if (memory.size >= MOST_KINDS) memory.delete(memory.keys().next().value!);
      memory.set(wanted.kind, found);
      if (turn === mine) told(view());
    }
  };
  const whole = async (): Promise<Whole | undefined> => {
    await rounds(() => undefined);
    const plan = current();
    return read && plan && { ...read, plan };
  };
  return {
    plan: (put, drop, means) => {
      turn += 1;
      for (const [name, bytes] of put) files.set(name, bytes);
      for (const name of drop) files.delete(name);
      const open = opener(files);
      const found = readJob(open, means ? { means } : {});
      const valves = found.job ? issuedValves(open, found.job.tools) : { valves: [], notices: [] };
      read = found.job && { job: found.job, plan: planJob(found.job, joints), valves: valves.valves };
      rest = { notices: [...found.notices, ...valves.notices], list: jointHeadings(open, listOf(files), means), mapping: found.mapping };
      return view();
    },
    speak: async (language) => {
      words = await loadWords(language);
    },
    rounds,
    joint: (tag) => current()?.joints.find((one) => one.tag === tag),
    whole,
    simulated: async () => {
      const all = await whole();
      return all && simulatedJob(all.job, all.plan);
    },
    departures: async () => {
      const all = await whole();
      return all ? departuresOf(all.plan) : [];
    },
    ways: (code, tags) => (read ? waysOut(read.job, code, tags) : []),
    compare: async (other) => {
      const all = await whole();
      const before = other instanceof Uint8Array ? (JSON.parse(new TextDecoder().decode(other)) as Plan) : planned(other);
      return all && before && comparePlans(before, all.plan, words);
    },
    list: (bytes, file, means, into) => {
      // read as it lies, so that a place is named as the spreadsheet shows it
      const tried = new Map(into === 'draft' ? files : [['job.yaml', ANY_JOB] as const]).set(file, bytes);
      const known = into === 'draft' ? undefined : joinedMappings(into);
      if (known !== undefined) tried.set(MAPPING_FILE, utf8(known));
      tried.set('job.yaml', changeYaml(tried.get('job.yaml')!, [{ kind: 'set', path: ['joints'], value: file }]));
      const open = opener(tried);
      const { job, notices, mapping } = readJob(open, { means });
      const head = jointHeadings(open, file, means);
      const csv = asCsv(bytes, file);
      return {
        csv: head && csv.ok ? csv.value : undefined,
        head,
        joints: (job?.joints ?? []).map(({ tag, subgroups }) => ({
          tag,
          bolts: subgroups.reduce((sum, one) => sum + one.positions.length, 0),
        })),
        notices: notices.filter(({ place }) => place?.file === file),
        mapping: mapping ?? known,
      };
    },
  };
}

/** The file in which a job says its joints stand. */
function listOf(files: ReadonlyMap<string, Uint8Array>): string {
  const bytes = files.get('job.yaml');
  return String((bytes && (yamlOf(bytes) as { readonly joints?: unknown } | undefined))?.joints ?? 'joints.csv');
}

/** A list is looked at before it has a job; a method is asked for where the list names none. */
const ANY_JOB = utf8('title: list\nsite: list\nwork-date: 2000-01-01\nrule-set: as-specified\n');

/** Opens files by their name; a file may be named with or without the folder it lies in. */
const opener =
  (files: ReadonlyMap<string, Uint8Array>): OpenFile =>
  (path) =>
    files.get(path) ?? files.get(path.split('/').at(-1)!) ?? 'missing';

function planned(files: ReadonlyMap<string, Uint8Array>): Plan | undefined {
  const { job } = readJob(opener(files));
  return job && planInteraction(job, planJob(job));
}
