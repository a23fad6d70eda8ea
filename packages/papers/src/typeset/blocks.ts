import type { Scene } from '../drawing/index.ts';
import { drawScene } from '../pdf/draw-scene.ts';
import type { Ink } from '../pdf/ink.ts';
import { type Flow, leadingOf, setLines } from './flow.ts';

/** Room under a heading that must be there, or it goes to the next page, mm. */
const WITH_HEADING = 24;

interface HeadingOptions {
  readonly second?: string;
  readonly keep?: number;
}

const HEADING = {
  1: { size: 17, before: 0, after: 3 },
  2: { size: 12, before: 4.5, after: 1.6 },
  3: { size: 9.5, before: 2.5, after: 1 },
} as const;

/** A heading with as much under it as must stay with it, mm; the second language stands under it, lighter. */
export function heading(flow: Flow, text: string, level: 1 | 2 | 3, { second, keep = WITH_HEADING }: HeadingOptions = {}): void {
  const { size, before, after } = HEADING[level];
  const style = { size, face: 'bold', ink: level === 1 ? 'accent' : 'ink' } as const;
  const lines = flow.lines(text, flow.width, style);
  if (!flow.need(before + lines.length * leadingOf(size) + keep) && flow.y() > flow.sheet.top) flow.move(before);
  flow.move(setLines(flow.canvas, lines, { x: flow.left, y: flow.y() }, style));
  if (second !== undefined && second !== text) paragraph(flow, second, { size: Math.max(7.5, size * 0.6), ink: 'quiet', after: 0 });
  flow.move(after);
}

export interface ParagraphStyle {
  readonly size?: number;
  readonly ink?: Ink;
  readonly face?: 'regular' | 'bold' | 'mono';
  readonly after?: number;
  readonly indent?: number;
}

/** A paragraph, broken over pages line by line where it must. */
export function paragraph(
  flow: Flow,
  text: string,
  { size = 9, ink = 'ink', face = 'regular', after = 2, indent = 0 }: ParagraphStyle = {},
): void {
  const style = { size, ink, face };
  const leading = leadingOf(size);
  for (const line of flow.lines(text, flow.width - indent, style)) {
    flow.need(leading);
    flow.move(setLines(flow.canvas, [line], { x: flow.left + indent, y: flow.y() }, style));
  }
  flow.move(after);
}

/** A name and what belongs to it, line under line; the names stand in a column of their own. */
export function facts(
  flow: Flow,
  pairs: readonly (readonly [string, string])[],
  { size = 9, nameWidth = 40 }: { readonly size?: number; readonly nameWidth?: number } = {},
): void {
  for (const [name, text] of pairs) {
    const names = flow.lines(name, nameWidth - 2, { size });
    const lines = flow.lines(text, flow.width - nameWidth, { size });
    const height = Math.max(names.length, lines.length) * leadingOf(size) + 1.1;
    flow.need(height);
    setLines(flow.canvas, names, { x: flow.left, y: flow.y() }, { size, ink: 'quiet' });
    setLines(flow.canvas, lines, { x: flow.left + nameWidth, y: flow.y() }, { size });
    flow.move(height);
  }
  flow.move(1.5);
}

/** A drawing, in the middle, no wider than the text. */
export function figure(flow: Flow, scene: Scene): void {
  const scale = Math.min(1, flow.width / scene.width);
  flow.need(scene.height * scale + 2);
  drawScene(flow.canvas, scene, { x: flow.left + (flow.width - scene.width * scale) / 2, y: flow.y() }, scale);
  flow.move(scene.height * scale + 3);
}

/** A paragraph on a tinted ground with a bar at its left: what must not be passed over. */
export function callout(flow: Flow, title: string, text: string, ink: Ink = 'attention'): void {
  const inner = flow.width - 8;
  const head = flow.lines(title, inner, { size: 9.5, face: 'bold' });
  const body = text === '' ? [] : flow.lines(text, inner, { size: 9 });
  const height = head.length * leadingOf(9.5) + body.length * leadingOf(9) + 5;
  flow.need(height);
  const at = { x: flow.left, y: flow.y() };
  flow.canvas.box(at, flow.width, height, { fill: 'tint' });
  flow.canvas.box(at, 1.4, height, { fill: ink });
  const taken = setLines(flow.canvas, head, { x: at.x + 5, y: at.y + 2.2 }, { size: 9.5, face: 'bold', ink });
  setLines(flow.canvas, body, { x: at.x + 5, y: at.y + 2.4 + taken }, { size: 9 });
  flow.move(height + 3);
}

/** Short sentences, each with its sign before it, in two columns. */
export function list(flow: Flow, items: readonly string[], { size = 8.5 }: { readonly size?: number } = {}): void {
  const width = (flow.width - 6) / 2;
  for (let at = 0; at < items.length; at += 2) {
    const pair = items.slice(at, at + 2).map((item) => flow.lines(item, width - 4, { size }));
    const height = Math.max(...pair.map(({ length }) => length)) * leadingOf(size) + 0.9;
    flow.need(height);
    for (const [i, lines] of pair.entries()) {
      const x = flow.left + i * (width + 6);
      flow.canvas.box({ x: x + 0.4, y: flow.y() + 1.2 }, 1.4, 1.4, { fill: 'ink' });
      setLines(flow.canvas, lines, { x: x + 4, y: flow.y() }, { size });
    }
    flow.move(height);
  }
  flow.move(1.5);
}

/** Lines to sign on, side by side, each with who signs under it. */
export function signatureLines(flow: Flow, names: readonly string[]): void {
  const width = flow.width / names.length;
  flow.need(20);
  for (const [i, name] of names.entries()) {
    const at = { x: flow.left + i * width, y: flow.y() + 13 };
    flow.canvas.line(at, { x: at.x + width - 5, y: at.y }, { stroke: 'ink', line: 0.25 });
    setLines(flow.canvas, flow.lines(name, width - 5, { size: 7.5 }), { x: at.x, y: at.y + 0.8 }, { size: 7.5, ink: 'quiet' });
  }
  flow.move(20);
}

export interface FactGroup {
  readonly title: string;
  readonly pairs: readonly (readonly [string, string])[];
}

/** Two data sheets side by side, each under its title. */
export function factPair(flow: Flow, groups: readonly [FactGroup, FactGroup], size = 8.5): void {
  const width = (flow.width - 8) / 2;
  const name = width * 0.38;
  const columns = groups.map(({ title, pairs }) => ({
    title,
    rows: pairs.map(([first, text]) => {
      const [names, lines] = [flow.lines(first, name - 2, { size }), flow.lines(text, width - name, { size })];
      return { names, lines, height: Math.max(names.length, lines.length) * leadingOf(size) + 1 };
    }),
  }));
  const height = 8 + Math.max(...columns.map(({ rows }) => rows.reduce((sum, row) => sum + row.height, 0)));
  flow.need(height + 3);
  flow.move(3);
  for (const [i, { title, rows }] of columns.entries()) {
    const x = flow.left + i * (width + 8);
    let y = flow.y();
    y += setLines(flow.canvas, [title], { x, y }, { size: 10, face: 'bold' }) + 1.4;
    for (const { names, lines, height: own } of rows) {
      setLines(flow.canvas, names, { x, y }, { size, ink: 'quiet' });
      setLines(flow.canvas, lines, { x: x + name, y }, { size });
      y += own;
    }
  }
  flow.move(height);
}
