/** Papers in: a job folder's files as bytes, a job and every fault out. */
export { LARGEST_FILE } from './decode.ts';
export { type HeadingMeans, joinedMappings, MAPPING_FILE } from './heading-memory.ts';
export { issuedValves } from './issued-valves.ts';
export { asCsv, type JointHeadings, jointHeadings } from './joint-source.ts';
export type { JudgedTest } from './judged-test.ts';
export type { OpenFile } from './open-file.ts';
export { type ReadEquipment, readEquipment, readToolStore } from './read-equipment.ts';
export { type ReadInspection, readInspection } from './read-inspection.ts';
export { type ReadJob, type ReadOptions, readJob } from './read-job.ts';
export { readMeasured } from './read-measured.ts';
export { type KnownJoint, type RecordOptions, readRecords, type TighteningRecord } from './read-records.ts';
export { readTests } from './read-tests.ts';
export { readValves } from './read-valves.ts';
