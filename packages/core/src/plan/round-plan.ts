import { USUAL_PACE } from '../duration/pace.ts';
import { N } from '../quantity.ts';
import { type Level, type PlayedPass, turnsOf } from '../schedule/schedule.ts';
import type { RoundPlan } from './interaction-plan.ts';
import type { InteractionTask } from './interaction-task.ts';
import type { StepSetting } from './plan.ts';

const { place, turning, change } = USUAL_PACE;

/** How a level of the schedule is written on the tool. */
export type SettingSays = (level: Level) => Pick<StepSetting, 'text' | 'labels' | 'torque'>;

/** One played pass as the plan keeps it: what to set, what it leaves, what it costs. */
export const roundPlan =
  ({ task, final, thread }: InteractionTask, says: SettingSays) =>
  (pass: PlayedPass): RoundPlan => {
    const turns = turnsOf(task, pass.way).flat();
    const levels = [...new Set(pass.level)].sort((a, b) => a.force - b.force);
    const tried = turns.length - pass.pulls;
    return {
      way: pass.way,
      settings: levels.map((level) => {
        const { text, labels, torque } = says(level);
        return { text, labels, torque, bolts: turns.filter((bolt) => pass.level[bolt] === level).map((bolt) => bolt + 1) };
      }),
      worst: pass.worst,
      spread: pass.spread,
      force: pass.force.map(Math.round),
      peak: N(pass.peak),
      pulls: pass.pulls,
      changes: pass.changes,
      minutes: (place + turning) * pass.pulls + USUAL_PACE.tried * tried + change * (pass.changes + 1),
      energy: (pass.work * 2 * Math.PI * (final.torque / final.preload)) / thread.pitch / 1000,
    };
  };
