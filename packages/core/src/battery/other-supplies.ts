import { type Notice, notice } from '../notice/index.ts';
import { CONTINUOUS_SHARE } from './road-charging.ts';

/** Supply of a tool that has no battery: what is there, and what its plate asks for. */
export type Supply = MainsSupply | AirSupply | HydraulicSupply;

interface MainsSupply {
  readonly kind: 'mains';
  /** measured at the tool while it runs */
  readonly volts: number;
  readonly wantedVolts: number;
  readonly fuse: number;
  readonly wantedCurrent: number;
  /** by a residual-current device */
  readonly protected: boolean;
}

interface AirSupply {
  readonly kind: 'air';
  /** measured at the tool while it runs */
  readonly bar: number;
  readonly wantedBar: number;
  readonly oiled: boolean;
  /** another length than at calibration: EN 1090-2 asks for a check (from memory) */
  readonly hoseChanged?: boolean;
}

interface HydraulicSupply {
  readonly kind: 'hydraulic';
  /** greatest the pump gives */
  readonly pumpBar: number;
  /** what the setting needs */
  readonly wantedBar: number;
  readonly hoseRating: number;
}

/** Of its plate's voltage a motor needs so much. Common practice, no source. */
const LEAST_VOLTAGE = 0.9;

/**
 * What speaks against starting with this supply: mains below 90 % of the plate's voltage, a fuse that a continuous load would take more than
 * 80 % of, no residual-current device; air below its pressure or without oil; hoses rated for less than the pump can give. Common practice,
 * no source. A reading that is not above zero is a fault and nothing else is judged.
 *
 * @example
 * const air = { kind: 'air', bar: 5.5, wantedBar: 6.3, oiled: true };
 * expect(supplyNotices('SK-7', air).map(({ code }) => code)).toEqual(['supply-weak']);
 */
export function supplyNotices(serial: string, supply: Supply): Notice[] {
  const readings = Object.values(supply).filter((value) => typeof value === 'number');
  if (!readings.every((one) => one > 0 && Number.isFinite(one))) return [notice('supply-reading', { serial })];
  const weak = (found: number, least: number, what: string, wanted: string) =>
    found < least ? [notice('supply-weak', { serial, what, wanted })] : [];
  switch (supply.kind) {
    case 'mains': {
      const { volts, wantedVolts, fuse, wantedCurrent } = supply;
      return [
        ...weak(volts, LEAST_VOLTAGE * wantedVolts, `${volts} V`, `${wantedVolts} V`),
        ...weak(CONTINUOUS_SHARE * fuse, wantedCurrent, `${fuse} A`, `${wantedCurrent} A`),
        ...(supply.protected ? [] : [notice('supply-unprotected', { serial })]),
      ];
    }
    case 'air':
      return [
        ...weak(supply.bar, supply.wantedBar, `${supply.bar} bar`, `${supply.wantedBar} bar`),
        ...(supply.oiled ? [] : [notice('supply-dry-air', { serial })]),
        ...(supply.hoseChanged ? [notice('supply-hose-changed', { serial })] : []),
      ];
    case 'hydraulic': {
      const { pumpBar, wantedBar, hoseRating } = supply;
      const reaches = Math.max(pumpBar, wantedBar);
      return [
        ...weak(pumpBar, wantedBar, `${pumpBar} bar`, `${wantedBar} bar`),
        ...(hoseRating < reaches ? [notice('supply-hose', { serial, rating: hoseRating, wanted: reaches })] : []),
      ];
    }
  }
}
