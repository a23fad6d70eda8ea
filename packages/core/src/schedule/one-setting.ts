import { copyState, type JointState, looseJoint } from '../interaction/joint-state.ts';
import { MOST_PASSES } from './custom.ts';
import { type Level, type PlayedPass, playPass, ROUND_ORDERS, type ScheduleTask } from './schedule.ts';

interface Candidate {
  readonly state: JointState;
  readonly passes: readonly PlayedPass[];
}

/** Candidates kept from pass to pass. */
const BEAM = 4;

/**
 * Fewest passes to a wanted evenness with one setting a pass and nothing above the final one: a beam over the orders star, circular,
 * either way round and from the opposite side. `leads`: choices of opening passes, custom's own among them, so that it never needs more
 * passes than custom. Where a joint cannot become that even, the evenest found with fewest passes.
 */
export function oneSettingSchedule(
  task: ScheduleTask,
  leads: readonly (readonly Level[])[],
  final: Level,
  wanted: number,
  most = MOST_PASSES,
): PlayedPass[] {
  const all = (level: Level) => new Array<Level>(task.compliance.size).fill(level);
  const openings = leads.map((levels): Candidate => {
    const state = looseJoint(task.compliance, undefined, task.gasketSet);
    return { state, passes: levels.map((level) => playPass(state, task, { way: 'in sequence', level: all(level) })) };
  });
  let best: readonly PlayedPass[] | undefined;
  let beam = openings;
  for (let count = 1; count <= most; count += 1) {
    // a candidate of fewer opening passes may already have gone on
    const grown = beam.flatMap((candidate) => {
      if (candidate.passes.length >= count) return [candidate];
      return ROUND_ORDERS.map((way): Candidate => {
        const state = copyState(candidate.state);
        return { state, passes: [...candidate.passes, playPass(state, task, { way, level: all(final) })] };
      });
    });
    const done = grown.filter(({ passes }) => passes.length === count && passes.at(-1)!.level[0] === final);
    for (const { passes } of done) if (!best || better(passes, best, wanted)) best = passes;
    if (best && best.at(-1)!.worst <= wanted) return [...best];
    const waiting = grown.filter((one) => !done.includes(one));
    beam = [...waiting, ...done.sort((a, b) => noticed(a) - noticed(b)).slice(0, BEAM)];
    if (done.length > 0 && done.every(({ passes }) => passes.at(-1)!.pulls === 0) && waiting.length === 0) break;
  }
  return [...(best ?? [])];
}

/** Even enough first, then fewer passes, then evener by what a crew would notice; at a draw the plainer way, which is tried first. */
function better(a: readonly PlayedPass[], b: readonly PlayedPass[], wanted: number): boolean {
  const [evenA, evenB] = [a.at(-1)!.worst, b.at(-1)!.worst];
  if (evenA <= wanted !== evenB <= wanted) return evenA <= wanted;
  if (a.length !== b.length && (evenA <= wanted || Math.abs(evenA - evenB) < NOTICED)) return a.length < b.length;
  return evenA < evenB - NOTICED;
}
/** Share of target. */
const NOTICED = 0.005;
const noticed = ({ passes }: Candidate) => Math.round(passes.at(-1)!.worst / NOTICED);
