import type { Ink } from '../pdf/ink.ts';
import { type Flow, setLines } from './flow.ts';

export interface Tally {
  readonly count: number;
  readonly name: string;
  readonly text: string;
  readonly ink: Ink;
}

const HEIGHT = 21;

/** Large figures side by side, each with its name and what it means. */
export function tallies(flow: Flow, all: readonly Tally[]): void {
  flow.need(HEIGHT);
  const width = flow.width / all.length;
  for (const [i, { count, name, text, ink }] of all.entries()) {
    const at = { x: flow.left + i * width, y: flow.y() };
    const tone = count === 0 ? 'quiet' : ink;
    flow.canvas.box(at, width - 3, 0.9, { fill: tone });
    flow.canvas.text({ x: at.x, y: at.y + 10 }, String(count), { size: 22, face: 'bold', ink: tone });
    const beside = at.x + flow.canvas.widthOf(String(count), { size: 22, face: 'bold' }) + 2;
    flow.canvas.text({ x: beside, y: at.y + 10 }, name, { size: 9.5, face: 'bold', ink: tone });
    setLines(flow.canvas, flow.lines(text, width - 4, { size: 7.5 }), { x: at.x, y: at.y + 12 }, { size: 7.5, ink: 'quiet' });
  }
  flow.move(HEIGHT);
}
