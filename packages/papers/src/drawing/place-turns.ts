import type { At, Shape } from './scene.ts';
import { collide, type TurnBox, turnBox } from './turn-box.ts';
import { FIRST_TURNS, type Turn } from './turns.ts';

/** The one place a bolt's box may have: always on the same side of its bolt, so that it is never taken for a neighbour's. */
type PlaceOf = (bolt: number, box: Pick<TurnBox, 'text' | 'size'>) => At | undefined;

/** Fewer turns than these say nothing of the pattern. */
const QUARTET = 4;

/** Every turn where all fit, smaller if need be; else the first ones that do, without a hole in the row. */
export function placeTurns(
  turns: readonly Turn[],
  size: number,
  placeOf: PlaceOf,
  free: (box: TurnBox) => boolean = () => true,
): { readonly shapes: readonly Shape[]; readonly shown: number } {
  const all = fit(turns, size, placeOf, free) ?? fit(turns, size * 0.88, placeOf, free);
  if (all) return { shapes: all.map(turnBox), shown: turns.at(-1)?.turn ?? 0 };
  const some = first(turns, size, placeOf, free);
  const smaller = some.shown < QUARTET ? first(turns, size * 0.72, placeOf, free) : some;
  return smaller.shown > some.shown ? smaller : some;
}

/** As many of the first turns as fit. */
function first(turns: readonly Turn[], size: number, placeOf: PlaceOf, free: (box: TurnBox) => boolean) {
  for (let last = FIRST_TURNS; last > 0; last -= 1) {
    const of = turns.filter(({ turn }) => turn <= last);
    const boxes = fit(of, size, placeOf, free);
    if (boxes) return { shapes: boxes.map(turnBox), shown: last };
  }
  return { shapes: [], shown: 0 };
}

function fit(turns: readonly Turn[], size: number, placeOf: PlaceOf, free: (box: TurnBox) => boolean): TurnBox[] | undefined {
  const boxes: TurnBox[] = [];
  for (const { bolt, turn } of turns) {
    const text = String(turn);
    const at = placeOf(bolt, { text, size });
    const box = at && { at, text, size };
    if (!box || !free(box) || boxes.some((other) => collide(box, other))) return undefined;
    boxes.push(box);
  }
  return boxes;
}
