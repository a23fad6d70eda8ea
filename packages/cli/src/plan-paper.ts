import type { Plan } from '@clampwright/core';
import { planPdf } from '@clampwright/papers/out';
import { paperOptions } from './paper-edge.ts';
import type { LanguageOptions } from './paper-languages.ts';
import { faultsText } from './plan-text.ts';

/** The plan on A4 for review. */
export async function planPaper(folder: string, plan: Plan, asked: LanguageOptions): Promise<Uint8Array> {
  const { options, faults } = await paperOptions(folder, 'plan.pdf, joints', asked);
  if (faults.length > 0) process.stderr.write(`${faultsText(faults, plan.job.units)}\n`);
  return planPdf(plan, options);
}
