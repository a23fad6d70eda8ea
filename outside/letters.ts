export { installedLetters } from '../packages/papers/src/pdf/installed-letters.ts';

export const MADE = new Date('2026-11-26T08:00:00Z');
