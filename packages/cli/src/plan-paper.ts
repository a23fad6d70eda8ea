import type { Plan } from '@clampwright/core';
import { planPdf } from '@clampwright/papers/out';
import { paperOptions } from './paper-edge.ts';
import { faultsText } from './plan-text.ts';

/** The plan on A4 for review. */
export function planPaper(folder: string, plan: Plan): Promise<Uint8Array> {
  const { options, faults } = paperOptions(folder, 'plan.pdf, joints');
  if (faults.length > 0) process.stderr.write(`${faultsText(faults, plan.job.units)}\n`);
  return planPdf(plan, options);
}
