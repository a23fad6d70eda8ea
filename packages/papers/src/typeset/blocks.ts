import type { Scene } from '../drawing/index.ts';
import type { TextStyle } from '../pdf/canvas.ts';
import { drawScene } from '../pdf/draw-scene.ts';
import type { Ink } from '../pdf/ink.ts';
import type { Flow } from './flow.ts';
import { leadingOf, setText } from './set-text.ts';
import type { Text } from './text.ts';

/** Room under a heading that must be there, or it goes to the next page, mm. */
const WITH_HEADING = 24;

interface HeadingOptions {
  /** what stands under it, lighter: the name of a joint under its tag */
  readonly under?: Text;
  readonly keep?: number;
}

const HEADING = {
  1: { size: 17, before: 0, after: 3 },
  2: { size: 12, before: 4.5, after: 1.6 },
  3: { size: 9.5, before: 2.5, after: 1 },
} as const;

/** A heading with as much under it as must stay with it, mm. */
export function heading(flow: Flow, text: Text, level: 1 | 2 | 3, { under, keep = WITH_HEADING }: HeadingOptions = {}): void {
  const { size, before, after } = HEADING[level];
  const laid = flow.lay(text, flow.width, { size, face: 'bold', ink: level === 1 ? 'accent' : 'ink' });
  if (!flow.need(before + laid.height + keep) && flow.y() > flow.sheet.top) flow.move(before);
  flow.move(setText(flow.canvas, laid, { x: flow.left, y: flow.y() }));
  if (under !== undefined && under !== text) paragraph(flow, under, { size: Math.max(7.5, size * 0.6), ink: 'quiet', after: 0 });
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
  text: Text,
  { size = 9, ink = 'ink', face = 'regular', after = 2, indent = 0 }: ParagraphStyle = {},
): void {
  for (const line of flow.lay(text, flow.width - indent, { size, ink, face }).lines) {
    const height = leadingOf(line.style.size);
    flow.need(height);
    flow.move(setText(flow.canvas, { lines: [line], height }, { x: flow.left + indent, y: flow.y() }));
  }
  flow.move(after);
}

/** A name, and what belongs to it. */
export type Pair = readonly [name: Text, text: Text];

/** A name and what belongs to it, line under line; the names stand in a column of their own. */
export function facts(
  flow: Flow,
  pairs: readonly Pair[],
  { size = 9, nameWidth = 40 }: { readonly size?: number; readonly nameWidth?: number } = {},
): void {
  for (const [name, text] of pairs) {
    const names = flow.lay(name, nameWidth - 2, { size, ink: 'quiet' });
    const texts = flow.lay(text, flow.width - nameWidth, { size });
    const height = Math.max(names.height, texts.height) + 1.1;
    flow.need(height);
    setText(flow.canvas, names, { x: flow.left, y: flow.y() });
    setText(flow.canvas, texts, { x: flow.left + nameWidth, y: flow.y() });
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
export function callout(flow: Flow, title: Text, text: Text, ink: Ink = 'attention'): void {
  const inner = flow.width - 8;
  const head = flow.lay(title, inner, { size: 9.5, face: 'bold', ink });
  const body = text === '' ? undefined : flow.lay(text, inner, { size: 9 });
  const height = head.height + (body?.height ?? 0) + 5;
  flow.need(height);
  const at = { x: flow.left, y: flow.y() };
  flow.canvas.box(at, flow.width, height, { fill: 'tint' });
  flow.canvas.box(at, 1.4, height, { fill: ink });
  const taken = setText(flow.canvas, head, { x: at.x + 5, y: at.y + 2.2 });
  if (body) setText(flow.canvas, body, { x: at.x + 5, y: at.y + 2.4 + taken });
  flow.move(height + 3);
}

/** Short sentences, each with its sign before it, in two columns. */
export function list(flow: Flow, items: readonly Text[], { size = 8.5 }: { readonly size?: number } = {}): void {
  const width = (flow.width - 6) / 2;
  for (let at = 0; at < items.length; at += 2) {
    const pair = items.slice(at, at + 2).map((item) => flow.lay(item, width - 4, { size }));
    const height = Math.max(...pair.map((one) => one.height)) + 0.9;
    flow.need(height);
    for (const [i, laid] of pair.entries()) {
      const x = flow.left + i * (width + 6);
      flow.canvas.box({ x: x + 0.4, y: flow.y() + 1.2 }, 1.4, 1.4, { fill: 'ink' });
      setText(flow.canvas, laid, { x: x + 4, y: flow.y() });
    }
    flow.move(height);
  }
  flow.move(2);
}

/** Lines to be signed on, side by side, each with what belongs on it. */
export function signatureLines(flow: Flow, names: readonly Text[]): void {
  const width = flow.width / names.length;
  const laid = names.map((name) => flow.lay(name, width - 5, { size: 7.5, ink: 'quiet' }));
  const height = 14 + Math.max(6, ...laid.map((one) => one.height));
  flow.need(height);
  for (const [i, one] of laid.entries()) {
    const at = { x: flow.left + i * width, y: flow.y() + 13 };
    flow.canvas.line(at, { x: at.x + width - 5, y: at.y }, { stroke: 'ink', line: 0.25 });
    setText(flow.canvas, one, { x: at.x, y: at.y + 0.8 });
  }
  flow.move(height);
}

export interface FactGroup {
  readonly title: Text;
  readonly pairs: readonly Pair[];
}

/** Two data sheets side by side, each under its title. */
export function factPair(flow: Flow, groups: readonly [FactGroup, FactGroup], size = 8.5): void {
  const width = (flow.width - 8) / 2;
  const name = width * 0.38;
  const titled: TextStyle = { size: 10, face: 'bold' };
  const columns = groups.map(({ title, pairs }) => {
    const rows = pairs.map(([first, text]) => {
      const [names, texts] = [flow.lay(first, name - 2, { size, ink: 'quiet' }), flow.lay(text, width - name, { size })];
      return { names, texts, height: Math.max(names.height, texts.height) + 1 };
    });
    const head = flow.lay(title, width, titled);
    return { head, rows, height: head.height + rows.reduce((sum, row) => sum + row.height, 0) };
  });
  const height = 3.4 + Math.max(...columns.map((column) => column.height));
  flow.need(height + 3);
  flow.move(3);
  for (const [i, { head, rows }] of columns.entries()) {
    const x = flow.left + i * (width + 8);
    let y = flow.y();
    y += setText(flow.canvas, head, { x, y }) + 1.4;
    for (const { names, texts, height: own } of rows) {
      setText(flow.canvas, names, { x, y });
      setText(flow.canvas, texts, { x: x + name, y });
      y += own;
    }
  }
  flow.move(height);
}
