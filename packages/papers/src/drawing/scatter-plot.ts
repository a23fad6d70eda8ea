import type { PreloadScatter } from '@clampwright/core';
import { ENGLISH_WORDS } from '@clampwright/words';
import type { At, Scene, Shape } from './scene.ts';

const SIZE = 2.8;
const text = (at: At, said: string, anchor: 'start' | 'middle' | 'end' = 'start'): Shape => ({
  kind: 'text',
  at,
  text: said,
  size: SIZE,
  anchor,
  fill: 'ink',
});

/** The spread of preload as a bell over its window: what lies outside is dark. */
export interface PreloadSpread {
  readonly mean: number;
  readonly deviation: number;
  readonly low?: number;
  readonly high?: number;
  readonly say: (force: number) => string;
}

/** Distribution of preload with its window. */
export function preloadBell({ mean, deviation, low, high, say }: PreloadSpread, width: number, { label } = ENGLISH_WORDS): Scene {
  const height = 26;
  const base = height - 5;
  const marks = [low, high].filter((one): one is number => one !== undefined && Math.abs(one - mean) < 6 * deviation);
  const from = Math.min(mean - 3.2 * deviation, ...marks.map((one) => one - deviation / 2));
  const to = Math.max(mean + 3.2 * deviation, ...marks.map((one) => one + deviation / 2));
  const x = (force: number) => ((force - from) / (to - from)) * width;
  const y = (force: number) => base - Math.exp(-(((force - mean) / deviation) ** 2) / 2) * (base - 2);
  const points = (a: number, b: number): At[] =>
    Array.from({ length: 61 }, (_, i) => a + ((b - a) * i) / 60).map((force) => ({ x: x(force), y: y(force) }));
  const tail = (a: number, b: number): Shape[] =>
    b > a
      ? [{ kind: 'polyline', closed: true, points: [{ x: x(a), y: base }, ...points(a, b), { x: x(b), y: base }], paint: { fill: 'ink' } }]
      : [];
  const edge = (force: number): Shape[] => [
    { kind: 'line', from: { x: x(force), y: 1 }, to: { x: x(force), y: base }, paint: { stroke: 'ink', width: 0.35, dashed: true } },
    text({ x: Math.min(width - 8, Math.max(8, x(force))), y: height - 1 }, say(force), 'middle'),
  ];
  return {
    width,
    height,
    title: label('scatter.bell-title', { mean: say(mean) }),
    shapes: [
      ...(low === undefined ? [] : tail(from, Math.min(low, to))),
      ...(high === undefined ? [] : tail(Math.max(high, from), to)),
      { kind: 'polyline', closed: false, points: points(from, to), paint: { stroke: 'ink', width: 0.45 } },
      { kind: 'line', from: { x: 0, y: base }, to: { x: width, y: base }, paint: { stroke: 'ink', width: 0.25 } },
      ...marks.flatMap(edge),
      ...(marks.some((one) => Math.abs(x(one) - x(mean)) < 18) ? [] : [text({ x: x(mean), y: height - 1 }, say(mean), 'middle')]),
    ],
  };
}

/** What decides the scatter, as bars, largest first. */
export function shareBars(shares: PreloadScatter['shares'], width: number, { label } = ENGLISH_WORDS): Scene {
  const row = 6;
  const names = 46;
  const room = width - names - 14;
  return {
    width,
    height: row * shares.length + 1,
    title: label('scatter.bars-title'),
    shapes: shares.flatMap(({ source, share }, at): Shape[] => {
      const y = row * at + 1;
      const right = names + Math.max(0.3, room * share);
      const points = [
        { x: names, y },
        { x: right, y },
        { x: right, y: y + 4 },
        { x: names, y: y + 4 },
      ];
      return [
        text({ x: 0, y: y + 3 }, label(`scatter.${source}`)),
        { kind: 'polyline', closed: true, points, paint: { fill: 'quiet' } },
        text({ x: right + 1.2, y: y + 3 }, label('scatter.share', { share: { dimension: 'percent', value: share } })),
      ];
    }),
  };
}
