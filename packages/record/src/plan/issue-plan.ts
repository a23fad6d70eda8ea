import type { JointPlan, Plan, StepPlan, SubgroupPlan } from '@clampwright/core';
import { hashOf } from '../bytes/hash.ts';
import { utf8 } from '../bytes/text.ts';
import type { CardIssued } from '../entry/kinds/card-issued.ts';
import type { PlanIssued } from '../entry/kinds/plan-issued.ts';
import type { Slice } from '../fold/slice.ts';

export interface Issue {
  readonly plan: PlanIssued;
  /** an entry each, after the plan's */
  readonly cards: readonly CardIssued[];
  /** the plan and the card of each joint, to be kept as attachments under their hashes */
  readonly attachments: readonly Uint8Array[];
}

/**
 * Freezes a plan: its bytes, the card of each joint, and what work is judged by. `jointId` gives the permanent id of a tag: the one it
 * had in an earlier issue, or a new one. Joints that stop are not issued.
 */
export function issuePlan(plan: Plan, number: string, jointId: (tag: string) => string, earlier?: 'continue' | 'stop'): Issue {
  const bytes = utf8(JSON.stringify(plan));
  const hash = hashOf(bytes);
  const issued = plan.joints.filter(({ verdict }) => verdict !== 'stop');
  const cards = issued.map((joint) => utf8(JSON.stringify(joint)));
  return {
    plan: {
      number,
      plan: hash,
      engine: plan.engine,
      title: plan.job.title,
      site: plan.job.site,
      ...(earlier === undefined ? {} : { earlier }),
      tools: plan.tools.map(({ serial, name, due }) => ({ serial, name, due })),
    },
    cards: issued.map((joint, at) => ({ number, plan: hash, slice: sliceOf(joint, jointId(joint.tag), hashOf(cards[at]!)) })),
    attachments: [bytes, ...cards],
  };
}

const sliceOf = (joint: JointPlan, id: string, card: Slice['card']): Slice => ({
  joint: id,
  tag: joint.tag,
  card,
  bolts: joint.boltCount,
  sequence: joint.sequence.list.map((line) => [...line]),
  toolsAtOnce: Math.max(1, ...joint.sequence.list.map(({ length }) => length)),
  ...(joint.datum ? { datum: joint.datum } : {}),
  steps: stepsOf(joint.subgroups),
});

/** The steps of all subgroups, each once, in the order of the first subgroup that has it; the settings of each beside it. */
function stepsOf(subgroups: readonly SubgroupPlan[]): Slice['steps'] {
  const all = subgroups.flatMap(({ positions, tightening }) => (tightening?.steps ?? []).map((step) => ({ positions, step })));
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
