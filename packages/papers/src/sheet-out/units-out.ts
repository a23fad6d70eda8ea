import {
  inDegrees,
  inInch,
  inKilonewton,
  inKip,
  inLbfFt,
  inNewtonMetre,
  type Millimetre,
  type Newton,
  type NewtonMillimetre,
  type Radian,
} from '@clampwright/core';
import type { UnitSystem } from '@clampwright/words';

/** Quantities as numbers in the units of a job, with the unit for the heading. */
export const unitsOut = (units: UnitSystem) =>
  units === 'metric'
    ? {
        force: { unit: 'kN', of: (value: Newton) => inKilonewton(value) },
        torque: { unit: 'N·m', of: (value: NewtonMillimetre) => inNewtonMetre(value) },
        length: { unit: 'mm', of: (value: Millimetre): number => value },
        angle: { unit: '°', of: (value: Radian) => inDegrees(value) },
      }
    : {
        force: { unit: 'kip', of: (value: Newton) => inKip(value) },
        torque: { unit: 'lbf·ft', of: (value: NewtonMillimetre) => inLbfFt(value) },
        length: { unit: 'in', of: (value: Millimetre): number => inInch(value) },
        angle: { unit: '°', of: (value: Radian) => inDegrees(value) },
      };
