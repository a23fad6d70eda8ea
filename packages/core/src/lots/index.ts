/** Fastener lots: what their tests say. */
export { type KStatistics, kStatistics } from './k-class.ts';
