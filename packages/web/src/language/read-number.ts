/**
 * A number as people type it, with a decimal point or a decimal comma; undefined where it is none. A thousands separator is not guessed:
 * `1.234,5` and `1,234.5` are refused, since one of them would be a thousand times wrong.
 */
export function readNumber(typed: string): number | undefined {
  const text = typed.trim();
  return /^\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : undefined;
}
