import { looseJoint } from '../interaction/joint-state.ts';
import { type Level, type PlayedPass, playPass, type ScheduleTask } from './schedule.ts';

/** More circular passes than this are no longer custom but despair. */
export const MOST_PASSES = 20;

/**
 * What crews are used to: star at rising shares of the final setting, then round the circle at the final one until the joint is as even
 * as wanted, or no nut moves any more. Source: the shares of the rule set, else 30/70/100 % (common practice, no source).
 */
export function customSchedule(task: ScheduleTask, leads: readonly Level[], final: Level, wanted: number): PlayedPass[] {
  const state = looseJoint(task.compliance, undefined, task.gasketSet);
  const all = (level: Level) => new Array<Level>(task.compliance.size).fill(level);
  const passes = [...leads, final].map((level) => playPass(state, task, { way: 'in sequence', level: all(level) }));
  while (passes.at(-1)!.worst > wanted && passes.length < MOST_PASSES) {
    const pass = playPass(state, task, { way: 'round', level: all(final) });
    if (pass.pulls === 0) break;
    passes.push(pass);
  }
  return passes;
}
