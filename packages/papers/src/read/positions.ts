/**
 * Bolt positions as people write them: `8` is a count (1 to 8), `1-4, 7, 9–12` are positions. `undefined`: unreadable.
 * A single number is a count, so one single bolt is written `7-7`.
 */
export function readPositions(text: string): number[] | undefined {
  const count = /^\d+$/.exec(text.trim());
  if (count) return upTo(1, Number(text));
  const positions: number[] = [];
  for (const part of text.split(/[,;]/)) {
    const span = /^\s*(\d+)\s*(?:[-–]\s*(\d+)\s*)?$/.exec(part);
    if (!span) return undefined;
    const from = Number(span[1]);
    const to = Number(span[2] ?? span[1]);
    if (to < from || to > LARGEST_JOINT || positions.length > LARGEST_JOINT) return undefined;
    positions.push(...upTo(from, to));
  }
  return positions;
}

/** Bolts in one joint: beyond this a number is a slip. */
export const LARGEST_JOINT = 2000;

const upTo = (from: number, to: number): number[] | never[] =>
  to > LARGEST_JOINT ? [] : Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
