import type { Inputs } from './row.ts';

/** A number among the givens. A row that lacks one its quantity needs is a defect of the row, so it throws. */
export function num(inputs: Inputs, key: string): number {
  const value = inputs[key];
  if (typeof value !== 'number') throw new Error(`the row gives no number "${key}"`);
  return value;
}

export function text(inputs: Inputs, key: string): string {
  const value = inputs[key];
  if (typeof value !== 'string') throw new Error(`the row gives no text "${key}"`);
  return value;
}

export function flag(inputs: Inputs, key: string): boolean {
  const value = inputs[key];
  if (typeof value !== 'boolean') throw new Error(`the row gives no true/false "${key}"`);
  return value;
}

export function list(inputs: Inputs, key: string): readonly number[] {
  const value = inputs[key];
  if (!Array.isArray(value)) throw new Error(`the row gives no list "${key}"`);
  return value as readonly number[];
}

export const has = (inputs: Inputs, key: string): boolean => inputs[key] !== undefined && inputs[key] !== null;
