/** Stiffness of bolts and of what they clamp, and how a joint shares a load: textbook forms to check the plan's own model against. */

export { type BoltResilience, type BoltSegments, boltResilience, type Resilience } from './bolt-resilience.ts';
export {
  gripOf,
  roundedUpLength,
  shankInGrip,
  type TwoAreaBolt,
  tappedGrip,
  tappedScrewLength,
  threadInGrip,
  throughBoltLength,
  twoAreaStiffness,
} from './bolt-stiffness.ts';
export {
  EMBEDDING_SOURCE,
  type EmbeddingPlace,
  embeddingAt,
  embeddingOf,
  type Loading,
  olderEmbedding,
  type Roughness,
} from './embedding.ts';
export {
  type ExpectedRotation,
  expectedRotation,
  judgeRotation,
  NO_PRELOAD,
  ROTATION_SOURCE,
  type SolidJoint,
  solidResilience,
} from './expected-rotation.ts';
export {
  coneFace,
  EXPONENTIAL_STIFFNESS,
  exponentialStiffness,
  type FrustumInput,
  frustumEnd,
  frustumStiffness,
  inSeries,
  memberStiffness,
  newtonPerMm,
  type Stiffness,
} from './frusta.ts';
export { boltElongation, effectiveBoltLength, embeddingLoss, forceRatio, rigidJointRotation, rotationToPreload } from './joint-angle.ts';
export {
  alternatingStress,
  boltForce,
  boltsForLoadFactor,
  clampForce,
  type JointUnderLoad,
  jointConstant,
  loadFactor,
  loadForClamp,
  preloadFromProof,
  pressureLoadPerBolt,
  separationFactor,
  serviceStress,
  stressOn,
  wholeBolts,
  yieldFactor,
} from './joint-load.ts';
export { type Layer, layeredStiffness } from './layered-members.ts';
export { type ClampedPart, coneDiameter, coneSlope, partResilience } from './part-resilience.ts';
export { greatestAssemblyPreload, leastAssemblyPreload, reserve, residualClampForce, type WorkingLoad } from './working-load.ts';
