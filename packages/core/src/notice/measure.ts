import type { Megapascal, Millimetre, Newton, NewtonMillimetre, Radian } from '../quantity.ts';

/** A quantity inside a message: kept as a number with its dimension, so that the reader's units are chosen when it is said. */
export type Measure =
  | { readonly dimension: 'force'; readonly value: Newton }
  | { readonly dimension: 'torque'; readonly value: NewtonMillimetre }
  | { readonly dimension: 'length'; readonly value: Millimetre }
  | { readonly dimension: 'stress'; readonly value: Megapascal }
  | { readonly dimension: 'angle'; readonly value: Radian }
  | { readonly dimension: 'percent'; readonly value: number };

export const force = (value: Newton): Measure => ({ dimension: 'force', value });
export const torque = (value: NewtonMillimetre): Measure => ({ dimension: 'torque', value });
export const length = (value: Millimetre): Measure => ({ dimension: 'length', value });
export const stress = (value: Megapascal): Measure => ({ dimension: 'stress', value });
/** A share, 0.04 for 4 %. */
export const percent = (value: number): Measure => ({ dimension: 'percent', value });
