import type { NewtonMillimetre, Radian } from '../quantity.ts';

/** Work of the tool on the nut, J. */
export interface TurnOfBolt {
  /** torque at which the ramp begins: 0 from snug, the first step's torque in a second step */
  readonly from: NewtonMillimetre;
  readonly to: NewtonMillimetre;
  readonly ramp: Radian;
  /** turns of run-down before the ramp, and the prevailing torque over them */
  readonly freeTurns: number;
  readonly running: NewtonMillimetre;
}

const PER_JOULE = 1000;

/**
 * Mechanical work of one tightening: the area under torque over angle.
 *
 *     W = (T₁ + T₂)/2·θ + T_r·2π·n
 *
 * - T₁, T₂ torque at begin and end of the ramp, θ its angle; T_r over n free turns
 *
 * Source: definition of work; the ramp is a straight line.
 *
 * @example
 * const bolt = { from: Nm(0), to: Nm(800), ramp: degrees(90), freeTurns: 10, running: Nm(2) };
 * expect(tighteningWork(bolt)).toBeCloseTo(753.98, 2);
 */
export const tighteningWork = ({ from, to, ramp, freeTurns, running }: TurnOfBolt): number =>
  (((from + to) / 2) * ramp + running * 2 * Math.PI * freeTurns) / PER_JOULE;

/** Product of the efficiencies of controller, motor and gear stages; stalling at the end lowers it further. */
export const overallEfficiency = (stages: readonly number[]): number => stages.reduce((product, stage) => product * stage, 1);

/** What a tool draws for one bolt, J: work over efficiency, and what it takes besides (starting, electronics). */
export interface ToolDraw {
  readonly efficiency: number;
  readonly overhead: number;
}

/** Own estimate for a geared battery tool that stalls at the end; the log's gauge drops replace it. Spread 0.25 to 0.6 is honest. */
export const USUAL_DRAW: ToolDraw = { efficiency: 0.35, overhead: 150 };

/** Energy the battery gives for one bolt, J. */
export const drawPerBolt = (work: number, { efficiency, overhead }: ToolDraw): number => work / efficiency + overhead;
