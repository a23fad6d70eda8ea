import { type Notice, notice } from '../notice/index.ts';
import { TEMPERATURES } from './battery.ts';

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

/** A continuous load may take so much of a fuse. Common practice, no source. */
export const CONTINUOUS_SHARE = 0.8;

/** Power a vehicle socket gives, W: fuse·volts·share. */
export const socketPower = (fuse: number, volts = 12, share: number = CONTINUOUS_SHARE): number => fuse * volts * share;

/** Current a charger takes from the vehicle through an inverter, A: the power chain. */
export const socketCurrent = (of: {
  readonly chargeCurrent: number;
  readonly batteryVolts: number;
  readonly chargerEfficiency: number;
  readonly inverterEfficiency: number;
  readonly vehicleVolts: number;
}): number => (of.chargeCurrent * of.batteryVolts) / (of.chargerEfficiency * of.inverterEfficiency * of.vehicleVolts);

/**
 * Does a vehicle socket bear charging on the road? Above its fuse: stop. Above what it may give for long: attention, engine running.
 *
 * @example
 * expect(roadChargingNotices(12.03, 10).map(({ code }) => code)).toEqual(['socket-fuse']);
 * expect(roadChargingNotices(12.03, 15).map(({ code }) => code)).toEqual(['socket-near-fuse']);
 * expect(roadChargingNotices(12.03, 20)).toEqual([]);
 */
export function roadChargingNotices(current: number, fuse: number): Notice[] {
  const amperes = Math.round(10 * current) / 10;
  if (current > fuse) return [notice('socket-fuse', { current: amperes, fuse })];
  return current > CONTINUOUS_SHARE * fuse ? [notice('socket-near-fuse', { current: amperes, fuse })] : [];
}

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

/** What is wrong with a battery before work or before charging. Gauges read in quarters; from about 30 % down the crew decides. Common practice, no source. */
export function batteryNotices(battery: {
  readonly serial: string;
  readonly temperature: number;
  readonly lit: number;
  readonly neverCharged?: boolean;
  readonly charging: boolean;
}): Notice[] {
  const { serial, temperature, lit, neverCharged = false, charging } = battery;
  const { low, high } = charging ? TEMPERATURES.charge : TEMPERATURES.work;
  return [
    ...(temperature < low || temperature > high
      ? [notice(charging ? 'battery-no-charging' : 'battery-no-working', { serial, celsius: temperature, low, high })]
      : []),
    ...(neverCharged ? [notice('battery-first-charge', { serial })] : []),
    ...(!charging && lit <= 1 ? [notice('battery-low', { serial })] : []),
  ];
}

/** Supply of a tool that has no battery: what is there, and what its plate asks for. */
export type Supply =
  | {
      readonly kind: 'mains';
      readonly volts: number;
      readonly wantedVolts: number;
      readonly fuse: number;
      readonly wantedCurrent: number;
      readonly protected: boolean;
    }
  | {
      readonly kind: 'air';
      readonly bar: number;
      readonly wantedBar: number;
      readonly oiled: boolean /** another length than at calibration: EN 1090-2 asks for a check (from memory) */;
      readonly hoseChanged?: boolean;
    }
  | { readonly kind: 'hydraulic'; readonly pumpBar: number; readonly wantedBar: number; readonly hoseRating: number };

/** What speaks against starting with this supply. Mains below 90 % of its voltage or without a residual-current device; air below its pressure; hoses rated for less. */
export function supplyNotices(serial: string, supply: Supply): Notice[] {
  switch (supply.kind) {
    case 'mains':
      return [
        ...(supply.volts < 0.9 * supply.wantedVolts
          ? [notice('supply-weak', { serial, what: `${supply.volts} V`, wanted: `${supply.wantedVolts} V` })]
          : []),
        ...(supply.fuse * CONTINUOUS_SHARE < supply.wantedCurrent
          ? [notice('supply-weak', { serial, what: `a fuse of ${supply.fuse} A`, wanted: `${supply.wantedCurrent} A` })]
          : []),
        ...(supply.protected ? [] : [notice('supply-unprotected', { serial })]),
      ];
    case 'air':
      return [
        ...(supply.bar < supply.wantedBar
          ? [notice('supply-weak', { serial, what: `${supply.bar} bar`, wanted: `${supply.wantedBar} bar` })]
          : []),
        ...(supply.oiled ? [] : [notice('supply-dry-air', { serial })]),
        ...(supply.hoseChanged ? [notice('supply-hose-changed', { serial })] : []),
      ];
    case 'hydraulic':
      return [
        ...(supply.pumpBar < supply.wantedBar
          ? [notice('supply-weak', { serial, what: `${supply.pumpBar} bar`, wanted: `${supply.wantedBar} bar` })]
          : []),
        ...(supply.hoseRating < supply.wantedBar
          ? [notice('supply-hose', { serial, rating: supply.hoseRating, wanted: supply.wantedBar })]
          : []),
      ];
  }
}
