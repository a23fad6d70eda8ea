import { copyState, type JointState, looseJoint } from '../interaction/joint-state.ts';
import { lastPassTargets, onePassTargets } from '../interaction/one-pass.ts';
import type { Turn } from '../interaction/play.ts';
import { clusterToLevels, nearestLevel } from './cluster.ts';
import { type Level, type PlayedPass, playPass, type RoundOrder, type SchedulePass, type ScheduleTask, turnsOf } from './schedule.ts';

/** What a schedule of several settings a pass may use. */
export interface SeveralSettings {
  /** settings of the chart as forces, rising */
  readonly levels: readonly Level[];
  /** no bolt may ever stand above this: the engineer's figure for this joint */
  readonly cap: number;
  readonly settingsPerPass: number;
  /** plays to spend on improving */
  readonly plays: number;
}

/** Shares of the exact first pass to try: less leaves the last pass something to tighten, more asks less of it. */
const FIRST_SHARES = [1, 0.95, 0.9, 0.85, 0.8];

interface Found {
  readonly passes: readonly [SchedulePass, SchedulePass];
  readonly worst: number;
}

/**
 * Two passes of at most m settings each that leave the joint even: the exact one-pass targets under the cap, grouped into settings of the
 * chart; the exact targets of the last pass from where that leaves the joint, grouped likewise; then every bolt tries the neighbouring
 * settings, judged by play-back. Opt-in: bolts stand above their target for a while.
 */
export function severalSettingsSchedule(task: ScheduleTask, wish: SeveralSettings): PlayedPass[] {
  const usable = wish.levels.filter(({ force }) => force <= wish.cap);
  if (usable.length === 0) return [];
  const starts: Found[] = [];
  for (const first of ['round', 'in sequence'] as const) {
    const exact = onePassTargets(task.compliance, flat(turnsOf(task, first)), new Float64Array(task.compliance.size).fill(task.target));
    for (const share of FIRST_SHARES) {
      const aimed = exact.map((force) => Math.min(wish.cap, share * force));
      const opening: SchedulePass = { way: first, level: clusterToLevels(aimed, usable, wish.settingsPerPass) };
      const start = afterFirst(opening, task);
      for (const last of ['round', 'round backwards', 'in sequence'] as const) {
        const closing = closingPass(start.state, task, last, usable, wish.settingsPerPass);
        starts.push({ passes: [opening, closing], worst: judge(start, closing, task, wish.cap) });
      }
    }
  }
  starts.sort((a, b) => a.worst - b.worst);
  // the last bolt ends on a setting of the chart: nothing can come nearer to the target than that
  const floor = Math.abs(nearestLevel(usable, task.target).force / task.target - 1) + CLOSE;
  let best = starts[0]!;
  for (const start of starts.slice(0, KEPT)) {
    if (best.worst <= floor) break;
    const improved = improve(start, task, wish, usable, Math.floor(wish.plays / KEPT), floor);
    if (improved.worst < best.worst) best = improved;
  }
  const state = looseJoint(task.compliance, undefined, task.gasketSet);
  return best.passes.map((pass) => playPass(state, task, pass));
}
/** Starts that are worth improving. */
const KEPT = 4;
/** Nearer than this to the nearest setting is as good as there. */
const CLOSE = 0.0005;

const flat = (order: readonly Turn[]): number[] => order.flat();

/** The last pass, bolt by bolt with look-ahead: what the exact schedule would ask now, at the nearest of the chosen settings. */
function closingPass(start: JointState, task: ScheduleTask, way: RoundOrder, levels: readonly Level[], most: number): SchedulePass {
  const final = new Float64Array(task.compliance.size).fill(task.target);
  const turns = turnsOf(task, way);
  const wanted = lastPassTargets(start, flat(turns), final);
  const chosen = [...new Set(clusterToLevels(wanted, levels, most))].sort((a, b) => a.force - b.force);
  const state = copyState(start);
  const level = new Array<Level>(task.compliance.size);
  for (const turn of turns) {
    const group = flat([turn]);
    const asked = group.map((bolt) => lastPassTargets(state, [bolt], final)[bolt]!);
    const one = nearestLevel(chosen, asked.reduce((sum, force) => sum + force, 0) / asked.length);
    for (const bolt of group) level[bolt] = one;
    playPass(state, task, { way, level }, [turn]);
  }
  return { way, level };
}

interface AfterFirst {
  readonly state: JointState;
  readonly peak: number;
}

function afterFirst(pass: SchedulePass, task: ScheduleTask): AfterFirst {
  const state = looseJoint(task.compliance, undefined, task.gasketSet);
  const { peak } = playPass(state, task, pass);
  return { state, peak };
}

/** Worst deviation after the last pass; a bolt above the cap on the way counts as far off. */
function judge(after: AfterFirst, pass: SchedulePass, task: ScheduleTask, cap: number): number {
  const played = playPass(copyState(after.state), task, pass);
  const peak = Math.max(played.peak, after.peak);
  return played.worst + (peak > cap * (1 + 1e-9) ? 1 + (peak - cap) / cap : 0);
}

/** Coordinate descent: each bolt tries the other settings of its pass, each setting its neighbours in the chart. */
function improve(found: Found, task: ScheduleTask, wish: SeveralSettings, levels: readonly Level[], plays: number, floor: number): Found {
  let best = found;
  let left = plays;
  const better = (start: AfterFirst, passes: Found['passes']): boolean => {
    left -= 1;
    const worst = judge(start, passes[1], task, wish.cap);
    if (worst >= best.worst - 1e-9) return false;
    best = { passes, worst };
    return true;
  };
  const few = (level: readonly Level[]) => new Set(level).size <= wish.settingsPerPass;
  let changed = true;
  while (changed && left > 0 && best.worst > floor) {
    changed = false;
    const start = afterFirst(best.passes[0], task);
    for (const change of changes(best.passes[1], task, levels)) {
      const last = { ...best.passes[1], level: change(best.passes[1].level) };
      if (left > 0 && few(last.level)) changed = better(start, [best.passes[0], last]) || changed;
    }
    for (const change of changes(best.passes[0], task, levels)) {
      const opening = { ...best.passes[0], level: change(best.passes[0].level) };
      if (left <= 0 || !few(opening.level)) continue;
      const after = afterFirst(opening, task);
      const again = () => closingPass(after.state, task, best.passes[1].way, levels, wish.settingsPerPass);
      changed = better(after, [opening, best.passes[1]]) || better(after, [opening, again()]) || changed;
    }
  }
  return best;
}

type Change = (level: readonly Level[]) => readonly Level[];

/** Every small change of a pass: a setting one up or down for all that have it, a turn at another of the settings in use. */
function changes({ way, level }: SchedulePass, task: ScheduleTask, levels: readonly Level[]): Change[] {
  const used = [...new Set(level)].sort((a, b) => a.force - b.force);
  const moves: Change[] = used.flatMap((one) =>
    [-1, 1].flatMap((step): Change[] => {
      const other = levels[levels.indexOf(one) + step];
      return other ? [(now) => now.map((of) => (of === one ? other : of))] : [];
    }),
  );
  for (const turn of turnsOf(task, way)) {
    const group = flat([turn]);
    for (const other of used)
      if (level[group[0]!] !== other) moves.push((now) => now.map((of, bolt) => (group.includes(bolt) ? other : of)));
  }
  return moves;
}
