/** Bolts of one joint in one step, and what each draws, J. */
export interface StepDraw {
  readonly bolts: number;
  readonly draw: number;
}

/** Energy a joint takes in all its steps, J. */
export const jointEnergy = (steps: readonly StepDraw[]): number => steps.reduce((sum, { bolts, draw }) => sum + bolts * draw, 0);

/** Whole batteries for that energy. Do not start the first step unless both are covered before the shift ends. */
export const batteriesNeeded = (energy: number, full: number): number => Math.ceil(energy / full - 1e-9);

/** Is what is left enough for the whole joint? */
export const canFinish = (energy: number, left: number): boolean => energy <= left;

/** Minutes to charge: energy at constant power, and the taper at its end (an allowance). Wh, W. */
export const chargeMinutes = (wattHours: number, watts: number, taper: number): number => (60 * wattHours) / watts + taper;

/** When a battery that runs low stops the work, by how a step ends. */
export type StepEnding = 'torque' | 'angle';

/**
 * Stop rule before the next bolt. A torque step may be broken off and finished with the next battery: warn, change, finish that bolt. An
 * angle step may not: a bolt whose angle is unknown is lost, so it is not begun.
 *
 * `sure`: bolts the battery does with 90 % confidence.
 *
 * @example
 * expect(beforeNextBolt(0, 'angle')).toBe('do not start');
 * expect(beforeNextBolt(0, 'torque')).toBe('change and finish');
 * expect(beforeNextBolt(3, 'angle')).toBe('go on');
 */
export const beforeNextBolt = (sure: number, ending: StepEnding): 'go on' | 'change and finish' | 'do not start' =>
  sure >= 1 ? 'go on' : ending === 'torque' ? 'change and finish' : 'do not start';
