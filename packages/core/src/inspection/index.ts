/** What is looked at after tightening, and the verdict. */
export { type DrawnSample, drawSample, type InspectedJoint } from './draw-sample.ts';
export * from './en-1090-inspection.ts';
export { howInspected, type Inspection, type InspectionMethod, RECHECK_HOURS } from './how-inspected.ts';
export { type InspectionRecord, inspectionRecord, type LookedAt } from './inspection-record.ts';
export { beforePressure, type InspectionTime, inspectionTime, type RecheckedFlange } from './inspection-time.ts';
export { afterReject, beginSequential, nextSequential, type SequentialLines, type SequentialState } from './sequential.ts';
