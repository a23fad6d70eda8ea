import type { Ink } from '../pdf/ink.ts';
import type { Flow } from './flow.ts';
import { setText } from './set-text.ts';
import { onOneLine, type Text } from './text.ts';

export interface Tally {
  readonly count: number;
  readonly name: Text;
  readonly text: Text;
  readonly ink: Ink;
}

const HEIGHT = 14;

/** Large figures side by side, each with its name and what it means. */
export function tallies(flow: Flow, all: readonly Tally[]): void {
  const width = flow.width / all.length;
  const texts = all.map(({ text }) => flow.lay(text, width - 4, { size: 7.5, ink: 'quiet' }));
  const height = HEIGHT + Math.max(7, ...texts.map((one) => one.height));
  flow.need(height);
  for (const [i, { count, name, ink }] of all.entries()) {
    const at = { x: flow.left + i * width, y: flow.y() };
    const tone = count === 0 ? 'quiet' : ink;
    flow.canvas.box(at, width - 3, 0.9, { fill: tone });
    flow.canvas.text({ x: at.x, y: at.y + 10 }, String(count), { size: 22, face: 'bold', ink: tone });
    const beside = at.x + flow.canvas.widthOf(String(count), { size: 22, face: 'bold' }) + 2;
    flow.canvas.text({ x: beside, y: at.y + 10 }, onOneLine(name, flow.languages), { size: 9.5, face: 'bold', ink: tone });
    setText(flow.canvas, texts[i]!, { x: at.x, y: at.y + 12 });
  }
  flow.move(height);
}
