import { USUAL_PACE } from '../duration/pace.ts';
import { looseJoint, loosen } from '../interaction/joint-state.ts';
import { pull, turn } from '../interaction/play.ts';
import type { Draws } from '../random/draws.ts';
import { drawMistakes } from './draw-mistakes.ts';
import type { MistakeRates } from './mistakes.ts';
import type { SimulatedJob, SimulatedJoint, SimulatedPart, SimulatedRound, TorqueSetting } from './simulated-job.ts';

/** A joint as one run left it. The arrays are used again by the next run. */
export interface PlayedJoint {
  /** force of every bolt after the last pull, and after embedding, N */
  readonly force: Float64Array;
  readonly embedded: Float64Array;
  minutes: number;
  /** work of the tools on the nuts, J */
  energy: number;
  pulls: number;
  mistakes: number;
}

/** Actual yield strength over the least one of the class, and its variation. Own estimate. */
const YIELD = { mean: 1.07, variation: 0.04 } as const;
/** Variation of embedding about its guide value. Own estimate. */
const EMBEDDING_VARIATION = 0.3;
/** No friction takes more than this from a preload. */
const LEAST = 0.05;
/** Synchronous tools work against each other; so many rounds bring them to rest. */
const SYNCHRONOUS = 40;

const PULL = USUAL_PACE.place + USUAL_PACE.turning;

/** Plays one joint, run after run. `shared`: the draws all joints of a run have in common, tools first, then lots. */
export type PlayJoint = (draws: Draws, shared: Float64Array) => PlayedJoint;

/**
 * A torque pull leaves `level·(1 + tool + lot + bolt + pull)`, each a normal draw of its own coefficient of variation: the tool's and
 * the lot's once a run, the bolt's once a joint, the pull's each time; never more than its own yield; never less than the bolt has. An
 * angle adds angle·P/2π/(δ_S + δ_P) up to yield. Bolts that act on each other are played with their compliance.
 */
export function jointPlayer(job: SimulatedJob, joint: SimulatedJoint, rates: MistakeRates): PlayJoint {
  const size = Math.max(...joint.parts.flatMap(({ bolts }) => bolts)) + 1;
  const partOf = partsByBolt(joint, size);
  const zeros = () => new Float64Array(size);
  const [embedded, own, plateau, targets] = [zeros(), zeros(), zeros(), zeros()];
  const state = joint.members && looseJoint(joint.members.compliance, 'absent', joint.members.gasketSet);
  const force = state ? state.force : zeros();
  const played: PlayedJoint = { force, embedded, minutes: 0, energy: 0, pulls: 0, mistakes: 0 };
  const mistakes = drawMistakes(rates);

  function begin(draws: Draws, shared: Float64Array): void {
    played.minutes = played.energy = played.pulls = 0;
    force.fill(0);
    if (state) loosen(state);
    for (let bolt = 0; bolt < size; bolt += 1) {
      const part = partOf[bolt]!;
      own[bolt] = 1 + part.lotMean * shared[job.tools.length + part.lot]! + part.boltToBolt * draws.normal();
      plateau[bolt] =
        part.yield === undefined ? Number.POSITIVE_INFINITY : part.yield * (YIELD.mean + YIELD.mean * YIELD.variation * draws.normal());
    }
    mistakes.start(draws);
  }

  function torquePull(bolt: number, target: number, { arm }: TorqueSetting): boolean {
    const before = force[bolt]!;
    if (before >= target) return false;
    const { pitch, resilience } = partOf[bolt]!;
    if (state) {
      const stood = state.holds[bolt] ? state.advance[bolt]! : 0;
      pull(state, bolt, target, 'tighten only');
      const moved = Math.max(0, state.advance[bolt]! - stood);
      played.energy += (workPerMove(arm, pitch) * moved * (before + target)) / 2;
    } else {
      force[bolt] = target;
      if (resilience !== undefined) played.energy += (workPerMove(arm, pitch) * resilience * (target ** 2 - before ** 2)) / 2;
    }
    return true;
  }

  function anglePull(bolt: number, angle: number, arm: number): void {
    const { pitch, resilience } = partOf[bolt]!;
    const advance = (angle * pitch) / (2 * Math.PI);
    const before = force[bolt]!;
    if (state) turn(state, bolt, advance);
    else if (resilience !== undefined) force[bolt] = Math.max(before, Math.min(before + advance / resilience, plateau[bolt]!));
    // the ramp up to where it yields, then on at that force
    const ramp = (resilience ?? 0) * (force[bolt]! - before);
    played.energy += workPerMove(arm, pitch) * (ramp * ((before + force[bolt]!) / 2) + Math.max(0, advance - ramp) * force[bolt]!);
  }

  function playTurn(bolts: readonly number[], round: SimulatedRound, beside: number, draws: Draws, shared: Float64Array): void {
    for (const bolt of bolts) {
      const setting = round.settings[round.settingOf[bolt]!];
      targets[bolt] = 0;
      if (!setting) continue;
      const share = mistakes.pull(draws);
      if (share === 0) continue;
      if (setting.kind === 'angle') {
        const turned = setting.angle - setting.minus + draws.uniform() * (setting.minus + setting.plus);
        anglePull(bolt, Math.min(1, share) * turned, setting.arm);
        played.pulls += 1;
        played.minutes += PULL;
        continue;
      }
      const factor = own[bolt]! + job.tools[setting.tool]!.certificate * shared[setting.tool]! + setting.repeatability * draws.normal();
      const level = beside < 0 ? setting.level : (setting.beside[beside] ?? setting.level);
      targets[bolt] = Math.min(level * share * Math.max(LEAST, factor), plateau[bolt]!);
    }
    for (let again = 0; again < (bolts.length === 1 ? 1 : SYNCHRONOUS); again += 1) {
      let moved = false;
      for (const bolt of bolts) {
        if (targets[bolt] === 0) continue;
        const moves = torquePull(bolt, targets[bolt]!, round.settings[round.settingOf[bolt]!] as TorqueSetting);
        if (again === 0) {
          played.pulls += 1;
          played.minutes += moves ? PULL : USUAL_PACE.tried;
        }
        moved ||= moves;
      }
      if (!moved) break;
    }
  }

  return (draws, shared) => {
    begin(draws, shared);
    for (const round of joint.rounds) {
      played.minutes += USUAL_PACE.change * round.settings.length;
      const beside = mistakes.round(draws, besideOf(round));
      for (const bolts of round.turns) playTurn(bolts, round, beside, draws, shared);
    }
    for (let bolt = 0; bolt < size; bolt += 1) {
      const { embedding, resilience } = partOf[bolt]!;
      const lost =
        embedding === undefined || resilience === undefined ? 0 : (embedding / resilience) * (1 + EMBEDDING_VARIATION * draws.normal());
      embedded[bolt] = Math.max(0, force[bolt]! - Math.max(0, lost));
    }
    played.mistakes = mistakes.count();
    return played;
  };
}

/** Work of the tool, J, per mm of nut advance and N of force: torque 2π·arm·F over each pitch. */
const workPerMove = (arm: number, pitch: number): number => (2 * Math.PI * arm) / pitch / 1000;

const besideOf = ({ settings }: SimulatedRound): number =>
  Math.max(0, ...settings.map((setting) => (setting.kind === 'torque' ? setting.beside.length : 0)));

function partsByBolt({ parts }: SimulatedJoint, size: number): SimulatedPart[] {
  const by = new Array<SimulatedPart>(size);
  for (const part of parts) for (const bolt of part.bolts) by[bolt] = part;
  return by;
}
