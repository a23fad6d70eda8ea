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
  readonly packVolts: number;
  readonly chargerEfficiency: number;
  readonly inverterEfficiency: number;
  readonly vehicleVolts: number;
}): number => (of.chargeCurrent * of.packVolts) / (of.chargerEfficiency * of.inverterEfficiency * of.vehicleVolts);

/** What a work day needs of batteries. */
export interface SupplyPlan {
  readonly energy: number;
  /** charges the day takes, and batteries that must be full at its beginning */
  readonly charges: number;
  readonly batteries: number;
  /** chargers that keep up with the crew; 0 where the batteries at hand are enough */
  readonly chargers: number;
  /** the fullest first, on the joint with the highest torque */
  readonly order: readonly string[];
}

/**
 * How many batteries and chargers a day takes. `minutes`: working time over which the energy is used; `charge`: minutes of one charge;
 * `owned`: batteries at hand, fullest first. With too few, the rest is charged while the crew works.
 *
 * @example
 * const plan = planSupply({ joints: [{ tag: 'J1', energy: 900_000 }], full: 291_600, minutes: 300, charge: 75, owned: 2 });
 * expect(plan).toMatchObject({ charges: 4, batteries: 2, chargers: 1 });
 */
export function planSupply(of: {
  readonly joints: readonly { readonly tag: string; readonly energy: number; readonly torque?: number }[];
  readonly full: number;
  readonly minutes: number;
  readonly charge: number;
  readonly owned: number;
}): SupplyPlan {
  const { joints, full, minutes, charge, owned } = of;
  const energy = joints.reduce((sum, joint) => sum + joint.energy, 0);
  const charges = batteriesNeeded(energy, full);
  const between = Math.max(0, charges - owned);
  // charges that fall due while the crew works, one after another on each charger
  const chargers = between === 0 ? 0 : Math.max(1, Math.ceil((between * charge) / Math.max(minutes, 1)));
  const order = [...joints].sort((a, b) => (b.torque ?? 0) - (a.torque ?? 0)).map(({ tag }) => tag);
  return { energy, charges, batteries: Math.min(charges, owned), chargers, order };
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
  | { readonly kind: 'air'; readonly bar: number; readonly wantedBar: number; readonly oiled: boolean }
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
