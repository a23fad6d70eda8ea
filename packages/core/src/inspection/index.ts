/** What is looked at after tightening, and the verdict. */
export * from './en-1090-inspection.ts';
