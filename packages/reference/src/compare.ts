import type { Row, Scalar, Value } from './row.ts';

/** Does a found value agree with the row? With both `abs` and `rel`, either one satisfied is enough. */
export function agrees(found: Value, row: Row): boolean {
  const { expected } = row;
  if (Array.isArray(expected) || Array.isArray(found)) {
    if (!Array.isArray(expected) || !Array.isArray(found) || expected.length !== found.length) return false;
    return expected.every((one, at) => scalarAgrees(found[at] as Scalar, one as Scalar, row));
  }
  return scalarAgrees(found as Scalar, expected as Scalar, row);
}

function scalarAgrees(found: Scalar, expected: Scalar, { tolerance }: Row): boolean {
  if (typeof found !== 'number' || typeof expected !== 'number') return found === expected;
  if (!Number.isFinite(found)) return false;
  const difference = Math.abs(found - expected);
  // a whisker for the decimal digits that binary cannot hold
  const slack = 1e-9 * Math.max(1, Math.abs(expected));
  if (tolerance.abs !== undefined && difference <= tolerance.abs + slack) return true;
  if (tolerance.rel !== undefined && difference <= tolerance.rel * Math.abs(expected) + slack) return true;
  return tolerance.abs === undefined && tolerance.rel === undefined && difference <= slack;
}
