/** Published figures and the runner that holds the engine against them. */
export { agrees } from './compare.ts';
export { DISPUTED } from './disputed.ts';
export { type CaseResult, type InteractionCase, isInteractionCase, judgeCase } from './interaction-case.ts';
export { type Judged, type Judgement, judge } from './judge.ts';
export type { Evaluator, Evaluators, Inputs, Row, Value } from './row.ts';
export { type Count, tally } from './tally.ts';
