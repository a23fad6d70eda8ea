import { bearingArea, bearingPressure, kN, LIMIT_PRESSURES, type LimitPressureEdition, limitPressure, mm } from '@clampwright/core';
import { closest } from '../closest.ts';
import { num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const face = (inputs: Inputs) => [mm(num(inputs, 'd_w_mm')), mm(num(inputs, 'd_h_mm'))] as const;
/** The row may write a cast alloy a little differently from the list. */
const limit = (edition: LimitPressureEdition) => (inputs: Inputs) => {
  const exact = limitPressure(text(inputs, 'material'), edition);
  return exact.ok
    ? exact.value.value
    : (closest(LIMIT_PRESSURES[edition], ({ names }) => names.join(' '), text(inputs, 'material'))?.limit ?? null);
};

export const bearingPressures: Evaluators = {
  p_G_2003: limit('2003'),
  p_G_1986: limit('1986'),
  A_p: (inputs) => bearingArea(...face(inputs)),
  p_head: (inputs) => bearingPressure(kN(num(inputs, 'F_kN')), ...face(inputs)),
};
