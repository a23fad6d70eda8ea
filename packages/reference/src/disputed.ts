/** Rows believed wrong, by id; the argument and its source stand in disputed.md beside this file under the same id. */
export const DISPUTED: Readonly<Record<string, string>> = {};
