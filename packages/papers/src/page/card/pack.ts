import { type CardBlock, type CardPiece, join } from './card-block.ts';

/** Fills sides with pieces in their order; `first` and `further`: the room of the first side and of every other, mm. */
export function pack(pieces: readonly CardPiece[], first: number, further: number): CardBlock[][] {
  const sides: CardBlock[][] = [[]];
  let left = first;
  for (const [at, piece] of pieces.entries()) {
    const continues = () => {
      const before = sides.at(-1)!.at(-1);
      return before !== undefined && join(before, piece.block) !== undefined;
    };
    const needs = () => piece.height + (continues() ? 0 : piece.opening);
    if (sides.at(-1)!.length > 0 && ((piece.newSide && !continues()) || needs() > left)) {
      sides.push([]);
      left = further;
    }
    left -= needs();
    const side = sides.at(-1)!;
    const before = side.at(-1);
    const joined = before && join(before, piece.block);
    if (joined) side[side.length - 1] = joined;
    else side.push(grown(piece, left - heightBefore(pieces, at)));
  }
  return sides;
}

/** Room that what follows on the same side will take: all of it up to the next piece that begins a side. */
function heightBefore(pieces: readonly CardPiece[], at: number): number {
  const rest = pieces.slice(at + 1);
  const end = rest.findIndex(({ newSide }) => newSide);
  const following = end < 0 ? rest : rest.slice(0, end);
  const kinds = new Set(following.map(({ block }) => block.kind));
  const openings = [...kinds].map((kind) => following.find(({ block }) => block.kind === kind)!.opening);
  return [...following.map(({ height }) => height), ...openings].reduce((sum, one) => sum + one, 0);
}

function grown({ block, height, most }: CardPiece, spare: number): CardBlock {
  if (block.kind !== 'drawing' || most === undefined) return block;
  return { ...block, height: block.height + Math.max(0, Math.min(most - height, spare)) };
}
