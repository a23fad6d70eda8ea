import { type Job, type JointPlan, mayBeIssued, type Plan, type StepPlan, tightenedAlike, type ValvePlan } from '@clampwright/core';
import { hashOf } from '../bytes/hash.ts';
import { utf8 } from '../bytes/text.ts';
import type { CardIssued } from '../entry/kinds/card-issued.ts';
import type { CardWithdrawn } from '../entry/kinds/card-withdrawn.ts';
import type { BodyOf } from '../entry/kinds/index.ts';
import type { JobKept } from '../entry/kinds/job-kept.ts';
import type { PlanIssued } from '../entry/kinds/plan-issued.ts';
import type { ValveIssued } from '../entry/kinds/valve-issued.ts';
import type { Slice } from '../fold/slice.ts';
import { type IssuedJoint, takenOff } from './taken-off.ts';

export interface Issue {
  readonly plan: PlanIssued;
  /** what it was made from */
  readonly job: JobKept;
  /** an entry each, after the plan's */
  readonly cards: readonly CardIssued[];
  readonly valves: readonly ValveIssued[];
  /** an entry each: of joints that an earlier plan carries, and this one not */
  readonly withdrawn: readonly CardWithdrawn[];
  /** plan, job, and the card of each joint and valve, to be kept as attachments under their hashes */
  readonly attachments: readonly Uint8Array[];
  /** all of it as entries, in the order to write them */
  readonly entries: readonly IssueEntry[];
}
type IssueKind = 'plan-issued' | 'job-kept' | 'card-issued' | 'card-withdrawn' | 'valve-issued';
type IssueEntry = { [K in IssueKind]: { readonly kind: K; readonly body: BodyOf<K> } }[IssueKind];

/** A gate valve of the job, with what a tool may do to it. */
export interface IssuedValve {
  readonly tag: string;
  readonly way: 'opening' | 'closing';
  readonly opens?: 'clockwise' | 'counter-clockwise';
  readonly plan: ValvePlan;
}

export interface IssueAs {
  readonly number: string;
  /** gives the permanent id of a tag: the one it had in an earlier issue, or a new one */
  readonly jointId: (tag: string) => string;
  /** what this plan says of work begun under an earlier one */
  readonly earlier?: 'continue' | 'stop';
  /** joints that have a card of an earlier plan */
  readonly before?: readonly IssuedJoint[];
}

/**
 * Freezes a plan: its bytes, the job it was made from, the card of each joint and valve, and what work is judged by. Joints that stop are not
 * issued, but those that only wait for a paper or a person are, with that hold; of valves those, too, that must not be moved, so that the crew reads why.
 * What an earlier plan carries and this one not is taken off by an entry each: the crew stops there.
 */
export function issuePlan(job: Job, plan: Plan, valves: readonly IssuedValve[], { number, jointId, earlier, before }: IssueAs): Issue {
  const bytes = jsonOf(plan);
  const from = jsonOf(job);
  const hash = hashOf(bytes);
  const off = takenOff(plan, before, earlier);
  const begun = new Set(off.filter(({ reason }) => reason === 'begun').map(({ tag }) => tag));
  const joints = plan.joints.filter((joint) => mayBeIssued(joint) && !begun.has(joint.tag));
  const cards = joints.map(jsonOf);
  const valveCards = valves.map(jsonOf);
  const issued: Omit<Issue, 'entries'> = {
    plan: {
      number,
      plan: hash,
      engine: plan.engine,
      title: plan.job.title,
      site: plan.job.site,
      ...(earlier === undefined ? {} : { earlier }),
      tools: plan.tools.map(({ serial, name, due }) => ({ serial, name, due })),
    },
    job: { number, plan: hash, job: hashOf(from) },
    cards: joints.map((joint, at) => ({ number, plan: hash, slice: sliceOf(joint, jointId(joint.tag), hashOf(cards[at]!)) })),
    valves: valves.map(({ tag }, at) => ({ number, joint: jointId(tag), tag, card: hashOf(valveCards[at]!) })),
    withdrawn: off.map(({ joint, reason }) => ({ number, joint, reason })),
    attachments: [bytes, from, ...cards, ...valveCards],
  };
  return {
    ...issued,
    entries: [
      { kind: 'plan-issued', body: issued.plan },
      { kind: 'job-kept', body: issued.job },
      ...issued.cards.map((body) => ({ kind: 'card-issued' as const, body })),
      ...issued.valves.map((body) => ({ kind: 'valve-issued' as const, body })),
      ...issued.withdrawn.map((body) => ({ kind: 'card-withdrawn' as const, body })),
    ],
  };
}

const jsonOf = (value: unknown): Uint8Array => utf8(JSON.stringify(value));

const sliceOf = (joint: JointPlan, id: string, card: Slice['card']): Slice => ({
  joint: id,
  tag: joint.tag,
  card,
  bolts: joint.boltCount,
  sequence: joint.sequence.list.map((line) => [...line]),
  toolsAtOnce: Math.max(1, ...joint.sequence.list.map(({ length }) => length)),
  ...(joint.datum ? { datum: joint.datum } : {}),
  steps: stepsOf(joint),
});

/** The steps of all bolts, each once, in the order of the first bolts that have it; the settings of each beside it. */
function stepsOf(joint: JointPlan): Slice['steps'] {
  const all = tightenedAlike(joint).flatMap(({ positions, steps }) => steps.map((step) => ({ positions, step })));
  const names = [...new Set(all.map(({ step }) => step.name))];
  return names.map((name) => {
    const own = all.filter(({ step }) => step.name === name);
    return {
      step: name,
      ordered: own.every(({ step }) => step.order === 'sequence'),
      repeats: own.some(({ step }) => step.end.kind === 'no nut moves'),
      settings: own.flatMap(({ positions, step }) => settingOf(step, positions)),
    };
  });
}

const settingOf = ({ setting }: StepPlan, positions: readonly number[]): Slice['steps'][number]['settings'] =>
  setting ? [{ tool: setting.tool, setting: setting.text, positions: [...positions] }] : [];
