import { type ExecutionClass, inspectionSample } from '../inspection/en-1090-inspection.ts';
import { howInspected, type Inspection } from '../inspection/how-inspected.ts';
import type { RuleSetId } from '../rules/index.ts';

/** How a joint is looked at afterwards, and how many of its bolts, where the rule set says so. */
export interface InspectionPlan extends Inspection {
  readonly sample?: number;
}

const SAMPLED = { torque: 'torque', combined: 'combined', hrc: 'HRC', dti: 'DTI' } as const;

/** The inspection of a joint; the sample needs the job's execution class. */
export function inspectionPlan(rule: RuleSetId, bolts: number, executionClass: ExecutionClass | undefined): InspectionPlan {
  const how = howInspected(rule);
  const method = rule.startsWith('en1090-') || rule.startsWith('de-') ? SAMPLED[rule.split('-').at(-1) as keyof typeof SAMPLED] : undefined;
  if (!method || !executionClass) return how;
  return { ...how, sample: inspectionSample(executionClass, method, 'second', bolts) };
}
