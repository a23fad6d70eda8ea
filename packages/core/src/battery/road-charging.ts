import { type Notice, notice } from '../notice/index.ts';

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
 * A fuse or a current that is not above zero is a fault, never a yes.
 *
 * @example
 * expect(roadChargingNotices(12.03, 10).map(({ code }) => code)).toEqual(['socket-fuse']);
 * expect(roadChargingNotices(12.03, 15).map(({ code }) => code)).toEqual(['socket-near-fuse']);
 * expect(roadChargingNotices(12.03, 20)).toEqual([]);
 */
export function roadChargingNotices(current: number, fuse: number): Notice[] {
  if (!(current > 0 && fuse > 0)) return [notice('socket-reading', {})];
  const amperes = Math.round(10 * current) / 10;
  if (current > fuse) return [notice('socket-fuse', { current: amperes, fuse })];
  return current > CONTINUOUS_SHARE * fuse ? [notice('socket-near-fuse', { current: amperes, fuse })] : [];
}
