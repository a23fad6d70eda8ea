import { boltCountOf, type Joint } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { groupOrder } from '../sequence/group.ts';
import { isPermutation, oneByOne, paintedNumbers, synchronousStar } from '../sequence/ring.ts';
import type { SequencePlan } from './plan.ts';

/** The order of bolts: the engineer's where given, a star on a ring, from the stiffest part outwards in a group. */
export function sequenceOf(joint: Joint): { readonly sequence: SequencePlan; readonly notices: readonly Notice[] } {
  const boltCount = boltCountOf(joint.layout);
  const notices: Notice[] = [];
  if (joint.sequence) {
    if (isPermutation(joint.sequence, boltCount)) {
      notices.push(notice('engineer-override', { what: 'tightening sequence' }));
      return { sequence: plan(oneByOne(joint.sequence), 'engineer'), notices };
    }
    return { sequence: plan([], 'engineer'), notices: [notice('sequence-wrong', { boltCount }, joint.place)] };
  }
  if (joint.layout.kind === 'group') {
    return { sequence: plan(oneByOne(groupOrder(joint.layout.bolts, joint.layout.stiffest)), 'outwards'), notices };
  }
  const { toolsAtOnce } = joint;
  if (toolsAtOnce > 1 && boltCount % toolsAtOnce !== 0) notices.push(notice('tools-at-once-wrong', { tools: toolsAtOnce, boltCount }));
  return { sequence: star(boltCount, toolsAtOnce), notices };
}

/** Rings of one size share their sequence: a job has few sizes and many rings. */
const stars = new Map<string, SequencePlan>();
function star(boltCount: number, tools: number): SequencePlan {
  const key = `${boltCount}/${tools}`;
  const known = stars.get(key);
  if (known) return known;
  const made = plan(synchronousStar(boltCount, tools), 'star');
  stars.set(key, made);
  return made;
}

const plan = (list: SequencePlan['list'], pattern: SequencePlan['pattern']): SequencePlan => ({
  list,
  painted: paintedNumbers(list.flat()),
  pattern,
});
