/** Models in: the bolted joints of an IFC file, to look at, and as a joint list. */
export { modelJointList } from './joint-list.ts';
export type { ParserPlace } from './open-ifc.ts';
export { type ModelJoint, type ReadModel, readModel } from './read-model.ts';
