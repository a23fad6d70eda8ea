import type { Fold } from '@clampwright/record';
import type { BoltLook, BoltState } from '../drawing/index.ts';

type Joint = ReturnType<typeof jointState>;
type Bolt = Joint['bolts'] extends ReadonlyMap<number, infer B> ? B : never;
type Told = Bolt['steps'][string][number];

const jointState = (fold: Fold, id: string) => fold.state('joint', id);

/** One time a bolt was tightened, as a row of the report. */
export interface WorkRow {
  readonly bolt: number;
  readonly step: string;
  readonly told: Told;
  /** told more than once: a contradiction that stays */
  readonly again: boolean;
}

/** How a joint stands: what was done at each bolt, and how many are through. */
export interface JointWork {
  readonly id: string;
  readonly tag: string;
  readonly state: Joint;
  readonly bolts: number;
  readonly done: number;
  readonly look: BoltLook;
  readonly rows: readonly WorkRow[];
  readonly tools: readonly string[];
  readonly people: readonly (string | undefined)[];
  readonly crewSigned: Joint['signatures'][number]['mention'] | undefined;
  readonly inspectorSigned: Joint['signatures'][number]['mention'] | undefined;
}

/** The joint of this id, read from the fold as tables and drawings want it. */
export function jointWork(fold: Fold, id: string): JointWork {
  const state = jointState(fold, id);
  const { plan, bolts } = state;
  const steps = plan?.slice.steps.map(({ step }) => step) ?? [];
  const last = steps.findLast((_, at) => plan?.slice.steps[at]?.repeats === false) ?? steps.at(-1);
  const count = Math.max(plan?.slice.bolts ?? 0, ...bolts.keys());
  const stateOf = (position: number): BoltState => {
    const bolt = bolts.get(position);
    const told = Object.keys(bolt?.steps ?? {});
    if (told.length === 0) return 'open';
    return last === undefined || told.includes(last) ? 'done' : 'begun';
  };
  const numbers = Array.from({ length: count }, (_, i) => i + 1);
  const rank = (step: string) => (steps.includes(step as never) ? steps.indexOf(step as never) : steps.length);
  const rows = [...bolts.values()]
    .sort((a, b) => a.position - b.position)
    .flatMap(({ position, steps: byStep }) =>
      Object.entries(byStep)
        .sort(([a], [b]) => rank(a) - rank(b))
        .flatMap(([step, list]) => list.map((told, at): WorkRow => ({ bolt: position, step, told, again: at > 0 }))),
    );
  const signed = (as: string) => state.signatures.findLast((one) => one.as === as)?.mention;
  return {
    id,
    tag: state.tag ?? id,
    state,
    bolts: count,
    done: numbers.filter((position) => stateOf(position) === 'done').length,
    look: { state: stateOf, spokenOf: (position) => isSpokenOf(bolts.get(position)) },
    rows,
    tools: [...new Set(rows.flatMap(({ told }) => told.tool ?? []))],
    people: [...new Set(rows.map(({ told }) => told.by))],
    crewSigned: signed('crew'),
    inspectorSigned: signed('inspector'),
  };
}

const isSpokenOf = (bolt: Bolt | undefined): boolean =>
  bolt !== undefined && (bolt.trouble.length > 0 || bolt.replaced > 0 || bolt.loosened || bolt.inspections.some(({ passed }) => !passed));
