import { label } from '@clampwright/words';
import type { Cell, PerLine } from './tick-layout.ts';

interface TickGridProps {
  readonly lines: readonly (readonly Cell[])[];
  readonly boxes: readonly number[];
  readonly perLine: PerLine;
}

/** Boxes for every bolt, in tightening order; the large number is the bolt's own, never its turn. */
export function TickGrid({ lines, boxes, perLine }: TickGridProps) {
  return (
    <div className={`ticks by-${perLine}`}>
      {lines.map((line) => (
        <div className="tick-row" key={line[0]!.bolt}>
          <span className="turns">{label('card.line', { from: line[0]!.turn, to: line.at(-1)!.turn })}</span>
          {line.map(({ bolt, joined }) => (
            <span className={joined ? 'tick joined' : 'tick'} key={bolt}>
              <b className="n">{bolt}</b>
              <span className="boxes">
                {boxes.map((number) => (
                  <i key={number}>{number}</i>
                ))}
              </span>
            </span>
          ))}
        </div>
      ))}
    </div>
  );
}
