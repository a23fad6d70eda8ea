/** What a screen shows of a plan: drawings, and facts in words. Apart from the readers, so that a page which only shows loads none of them. */
export { forceRing, forceStrips } from './drawing/force-plot.ts';
export { jointDrawing, type Scene, toSvg } from './drawing/index.ts';
export { preloadBell, shareBars } from './drawing/scatter-plot.ts';
export { fastenerText, handlingText } from './page/bolt-line.ts';
export { aimText, bigText, finalStep } from './page/final-step.ts';
export { positionsText, spoken } from './page/spoken.ts';
export { wayText } from './page/way-text.ts';
export { inspectionFacts, workFacts } from './told/around-facts.ts';
export type { ToldFact } from './told/fact.ts';
export { kitRows } from './told/kit-rows.ts';
export { permitFacts } from './told/permit-facts.ts';
export { preloadFacts } from './told/preload-facts.ts';
