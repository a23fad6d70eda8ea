import type { Outcome } from '@clampwright/core';

/** What an outcome holds, or `null` where the engine refuses: a row expects `null` where the standard gives no value. */
export const valueOrNull = <T>(outcome: Outcome<T>): T | null => (outcome.ok ? outcome.value : null);
