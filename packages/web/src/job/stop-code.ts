/**
 * Four digits to be read over the radio when a plan is withdrawn: whoever has the plan on a device can type them and stop, before any
 * network says so. Follows from the plan's hash, so that a code of another plan stops nothing.
 */
export const stopCode = (planHash: string): string => String(Number.parseInt(planHash.slice(0, 8), 16) % 10_000).padStart(4, '0');
