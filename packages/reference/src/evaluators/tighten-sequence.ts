import { paintedNumbers, starOrder } from '@clampwright/core';
import { num } from '../inputs.ts';
import type { Evaluators } from '../row.ts';

export const tightenSequence: Evaluators = {
  bolt_order: (inputs) => starOrder(num(inputs, 'bolt_count')),
  sequence_number_by_position: (inputs) => paintedNumbers(starOrder(num(inputs, 'bolt_count'))),
  bolt_at_step: (inputs) => starOrder(num(inputs, 'bolt_count'))[num(inputs, 'step') - 1]!,
};
