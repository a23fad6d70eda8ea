/** Scatter: samples, spread, what comes of it. */

export { chanceAllInside, chanceInside, type JointScatter, type PreloadWindow } from './all-inside.ts';
export { type Contribution, type ScatterSource, type ScatterSplit, splitScatter } from './contributions.ts';
export { normalMoments, type Propagated, propagate, type ScatterInput, type Spread, worstCase } from './propagation.ts';
export { sampleDeviation, sampleMean } from './sample.ts';
