/** Loosening: what it takes, fresh and aged. */
export * from './breakaway.ts';
