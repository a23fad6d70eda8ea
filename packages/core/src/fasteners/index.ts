/** Threads, grades, hexagons, nuts, washers and holes: tables of the standards, each with its citation. */

// inch
export { ASTM_GRADES } from './astm-grades.ts';
export { bearingDiameter } from './bearing-diameter.ts';
export { type BoltLoad, boltLoad } from './bolt-loads.ts';
export { type SteelworkHole, type SteelworkHoleType, steelworkHole } from './en1090-2-hole.ts';
// metric
export {
  type BoltSystem,
  type ClampRange,
  clearThreadsAreEnough,
  hvClampRange,
  hvClampSource,
  isStructuralDiameter,
  protrusionIsEnough,
} from './en14399-geometry.ts';
export { hrHexagon, hvHexagon, hvLargeAcrossFlats, type StructuralHexagon } from './en14399-hexagon.ts';
export { engagementH28, requiredEngagementH28, strengthRatioH28 } from './engagement-h28.ts';
export { F436_THICKNESS, F436_WASHERS, f436Source, f436Washer, type InchWasher } from './f436-washer.ts';
export { findGrade, GRADES } from './find-grade.ts';
export { findInchThread, type InchUsage } from './find-inch-thread.ts';
export { findThread } from './find-thread.ts';
export * from './grade.ts';
export { cornersOf, type Hexagon, type HexagonProduct, hexagonFor } from './hexagon.ts';
export {
  addToGrip,
  addToGripSource,
  capScrewThreadLength,
  STRUCTURAL_LENGTHS,
  structuralBoltLength,
  structuralThreadLength,
  structuralThreadSource,
} from './inch-bolt-length.ts';
export { HEX_HEADS, hexHeadSource, type InchHead, STRUCTURAL_HEADS, structuralHeadSource } from './inch-head-dimensions.ts';
export { type InchItem, inchHexagon, inchItem } from './inch-hexagon.ts';
export { type HoleEdition, type InchHole, type StructuralHole, structuralInchHole } from './inch-hole.ts';
export { HEAVY_HEX_NUTS, HEX_NUTS, heavyHexNutSource, hexNutSource, type InchNut } from './inch-nut-dimensions.ts';
export { INCH_NUT_PROOF, type InchNutGrade, inchNutProofLoad } from './inch-nut-proof.ts';
export { inchSize } from './inch-size.ts';
export { INCH_THREADS, type InchSeries, inchThread } from './inch-threads.ts';
export { PROPERTY_CLASSES } from './iso-898-1.ts';
export { propertyClassLoad } from './iso-898-1-load.ts';
export { type NutStandard, nutProofLoad, nutProofStress } from './iso-898-2.ts';
export { STAINLESS_CLASSES } from './iso-3506-1.ts';
export { type IsoHexagon, isoHexagon, isoThreadLength } from './iso-hexagon.ts';
export { type HoleFit, iso273Hole } from './iso273-hole.ts';
export { METRIC_THREADS, metricPitches, metricThread } from './metric-threads.ts';
export { SAE_GRADES } from './sae-j429.ts';
export { socketHeadFace } from './socket-head.ts';
export * from './thread.ts';
export { boltShearArea, type Engagement, nutShearArea } from './thread-shear-area.ts';
export {
  boltThreadBending,
  breakingLoad,
  type EngagementStrength,
  nutDilation,
  nutThreadBending,
  type RequiredEngagementInput,
  requiredEngagement,
  type ShearStrengths,
  shearStrength,
  strippingLoads,
  threadStrengthRatio,
} from './thread-stripping.ts';
export { type Washer, type WasherStandard, washer } from './washer.ts';
