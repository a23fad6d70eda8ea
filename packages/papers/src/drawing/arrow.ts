import { type At, around, type Shape } from './scene.ts';

/** A filled arrow head: its point at `tip`, looking along `angle` (clockwise from twelve o'clock). */
export const arrowHead = (tip: At, angle: number, size: number): Shape => ({
  kind: 'polyline',
  closed: true,
  points: [tip, around(tip, size, angle + Math.PI - 0.42), around(tip, size, angle + Math.PI + 0.42)],
  paint: { fill: 'ink' },
});

/** A wedge that points at bolt 1, filled: found at a glance, in black and white too. */
export const wedge = (tip: At, angle: number, size: number): Shape => ({
  kind: 'polyline',
  closed: true,
  points: [tip, around(tip, size, angle + Math.PI - 0.5), around(tip, size, angle + Math.PI + 0.5)],
  paint: { fill: 'mark' },
});
