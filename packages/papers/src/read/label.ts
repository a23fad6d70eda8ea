/** Tags, serial numbers, lots, settings are labels in the log: one line, no longer than this. */
export const LONGEST_LABEL = 120;

/** Can the log keep it as a label? */
export const isLabel = (text: string): boolean => text.length <= LONGEST_LABEL && !/\p{Cc}/u.test(text);
