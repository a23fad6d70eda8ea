import type { Notice } from '@clampwright/core';
import { byCoefficients, byNutFactor, type Friction, type Millimetre, notice, type Place, type Source } from '@clampwright/core';

export interface FrictionCells {
  readonly k?: number | undefined;
  readonly thread?: number | undefined;
  readonly bearing?: number | undefined;
  readonly bearingDiameter?: Millimetre | undefined;
  readonly variation?: number | undefined;
  readonly source?: string | undefined;
  readonly tested?: boolean | undefined;
}

/** What occurs, widely taken: outside, a figure is a slip of digits or column. Own limits; printed nut factors run from 0.086 to 0.52. */
const OCCURS = {
  k: { what: 'nut factor', low: 0.05, high: 0.5 },
  thread: { what: 'coefficient of thread friction', low: 0.02, high: 0.6 },
  bearing: { what: 'coefficient of bearing friction', low: 0.02, high: 0.6 },
} as const;
type Figure = keyof typeof OCCURS;

/**
 * Friction from what was entered: a nut factor, or both coefficients with the bearing diameter. Half of it is a fault, and so is
 * a figure that no fastener has.
 *
 * - `place` of the whole, `at` the place of one figure
 */
export function readFriction(
  cells: FrictionCells,
  place: Place,
  at: (figure: Figure) => Place,
): { readonly friction?: Friction; readonly notices: readonly Notice[] } {
  const { k, thread, bearing, bearingDiameter, variation } = cells;
  if (k === undefined && thread === undefined && bearing === undefined) return { notices: [] };
  const odd = (Object.keys(OCCURS) as Figure[]).flatMap((figure) => {
    const { what, low, high } = OCCURS[figure];
    const value = cells[figure];
    return value === undefined || (value >= low && value <= high)
      ? []
      : [notice('friction-implausible', { what, low: String(low), high: String(high) }, at(figure))];
  });
  if (odd.length > 0) return { notices: odd };
  if (cells.source === undefined) return half('the source of the friction: certificate, test or table', place);
  const source: Source = { standard: cells.source, provenance: cells.tested ? 'certificate' : 'memory' };
  if (k !== undefined) return { friction: byNutFactor(k, source, variation), notices: [] };
  if (thread === undefined || bearing === undefined || bearingDiameter === undefined) {
    return half('thread friction, bearing friction and bearing diameter, or a nut factor', place);
  }
  return { friction: byCoefficients(thread, bearing, bearingDiameter, source, variation), notices: [] };
}

const half = (wanted: string, place: Place) => ({ notices: [notice('friction-half-given', { wanted }, place)] });
