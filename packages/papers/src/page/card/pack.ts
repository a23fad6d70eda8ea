import { type CardBlock, type CardPiece, join } from './card-block.ts';

/**
 * Fills sides with pieces in their order; `first` and `further`: the room of the first side and of every other, mm. A drawing takes what its
 * side has left in the end.
 */
export function pack(pieces: readonly CardPiece[], first: number, further: number): CardBlock[][] {
  const sides: CardBlock[][] = [[]];
  const left = [first];
  for (const piece of pieces) {
    const continues = () => {
      const before = sides.at(-1)!.at(-1);
      return before !== undefined && join(before, piece.block) !== undefined;
    };
    const needs = () => piece.height + (continues() ? 0 : piece.opening);
    if (sides.at(-1)!.length > 0 && ((piece.newSide && !continues()) || needs() > left.at(-1)!)) {
      sides.push([]);
      left.push(further);
    }
    left[left.length - 1]! -= needs();
    const side = sides.at(-1)!;
    const before = side.at(-1);
    const joined = before && join(before, piece.block);
    if (joined) side[side.length - 1] = joined;
    else side.push(piece.block);
  }
  const drawing = pieces.find(({ block }) => block.kind === 'drawing');
  return sides.map((side, at) => side.map((block) => grown(block, drawing, left[at]!)));
}

function grown(block: CardBlock, drawing: CardPiece | undefined, spare: number): CardBlock {
  if (block.kind !== 'drawing' || drawing?.most === undefined) return block;
  return { ...block, height: block.height + Math.max(0, Math.min(drawing.most - drawing.height, spare)) };
}
