/**
 * A size in inches as a number: `3/4`, `1 1/8`, `1-1/8`, `0.75`, each with or without an inch mark.
 *
 * @example
 * expect(inchSize('1-1/8"')).toBe(1.125);
 * expect(inchSize('M20')).toBe(undefined);
 */
export function inchSize(text: string): number | undefined {
  const bare = text.replace(/["”″]|\s*\b(?:in|inch)\.?$/gi, '').trim();
  const parts = /^(?:(?:(\d+)[\s-]+)?(\d+)\/(\d+)|(\d*\.?\d+))$/.exec(bare);
  if (!parts) return undefined;
  const [, whole, over, under, decimal] = parts;
  if (decimal !== undefined) return Number(decimal);
  return Number(under) === 0 ? undefined : Number(whole ?? 0) + Number(over) / Number(under);
}
