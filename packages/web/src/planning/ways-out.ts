import { type Job, type JointPlan, planJob, RULE_SETS, swapTool } from '@clampwright/core';
import type { Way } from './view.ts';

/** So many joints are planned anew at most to find a way: a list waits no longer than a blink. */
const MOST_TRIALS = 80;

/**
 * Tools and methods by which joints that stop would not stop: each is tried by planning the joints so, and offered only where the
 * reason is gone and nothing else stops them. A method is offered only to joints that have the figures it asks for; whether it may be
 * used is the engineer's to say.
 */
export function waysOut(job: Job, code: string, tags: readonly string[]): readonly Way[] {
  const few = tags.slice(0, Math.max(1, Math.floor(MOST_TRIALS / (job.tools.length + Object.keys(RULE_SETS).length))));
  const now = new Map(planned(job, few).map((joint) => [joint.tag, joint]));
  const helped = (change: (tag: string) => Job | undefined): string[] =>
    few.filter((tag) => {
      const [joint] = planned(change(tag) ?? job, [tag]);
      return joint !== undefined && joint.verdict !== 'stop' && !joint.reasons.some((one) => one.code === code);
    });
  const same = (kind: string, tag: string) => now.get(tag)?.rule.id === kind;
  const usesOf = (tag: string) =>
    new Set(now.get(tag)?.subgroups.flatMap((one) => one.tightening?.steps.flatMap(({ setting }) => setting?.tool ?? []) ?? []));
  const tools = job.tools.flatMap(({ serial }): Way[] => {
    const good = helped((tag) => (usesOf(tag).has(serial) && usesOf(tag).size === 1 ? undefined : swapTool(job, tag, [serial])));
    return good.length > 0 ? [{ kind: 'tool', serial, tags: good, all: good.length === few.length }] : [];
  });
  const rules = Object.entries(RULE_SETS).flatMap(([rule, { title }]): Way[] => {
    const good =
      few.length === 0 || OTHER_PARTS.test(rule) || few.some((tag) => family(now.get(tag)?.rule.id) !== family(rule))
        ? []
        : helped((tag) => (same(rule, tag) ? undefined : byRule(job, tag, rule)));
    return good.length > 0 ? [{ kind: 'rule', rule, title, tags: good, all: good.length === few.length }] : [];
  });
  return [...tools, ...rules].sort((a, b) => b.tags.length - a.tags.length).slice(0, 4);
}

/** Methods that ask for bolts or washers which are not in the joint: nobody is led to buy others by a button. */
const OTHER_PARTS = /-(hrc|dti|twist-off)$/;

/** Methods of one standard: nobody goes from one standard to another to be rid of a stop. */
const family = (rule: string | undefined): string => rule?.split('-')[0] ?? '';

const planned = (job: Job, tags: readonly string[]): readonly JointPlan[] =>
  planJob({ ...job, joints: job.joints.filter(({ tag }) => tags.includes(tag)) }).joints;

const byRule = (job: Job, tag: string, rule: string): Job => ({
  ...job,
  joints: job.joints.map((joint) => {
    if (joint.tag !== tag) return joint;
    const { edition: _, ...rest } = joint;
    return { ...rest, rule };
  }),
});
