import { type At, around, type Paint, type Scene, type Shape } from '../drawing/scene.ts';
import type { BoxStyle, Canvas } from './canvas.ts';
import { POINTS_PER_MM } from './open-pdf.ts';

type Draw = { readonly [K in Shape['kind']]: (shape: Extract<Shape, { kind: K }>, pen: Pen) => void };
interface Pen {
  readonly canvas: Canvas;
  readonly to: (at: At) => At;
  readonly scale: number;
}

/** The steps of an arc are chords no longer than this, mm of paper. */
const CHORD = 0.4;

const DRAW: Draw = {
  circle: ({ centre, radius, paint }, { canvas, to, scale }) => canvas.circle(to(centre), radius * scale, styleOf(paint, scale)),
  line: ({ from, to: end, paint }, { canvas, to, scale }) => canvas.path([to(from), to(end)], false, styleOf(paint, scale)),
  polyline: ({ points, closed, paint }, { canvas, to, scale }) => canvas.path(points.map(to), closed, styleOf(paint, scale)),
  arc: ({ centre, radius, from, to: end, paint }, { canvas, to, scale }) => {
    const steps = Math.max(8, Math.ceil((Math.abs(end - from) * radius) / CHORD));
    const points = Array.from({ length: steps + 1 }, (_, i) => to(around(centre, radius, from + ((end - from) * i) / steps)));
    canvas.path(points, false, styleOf(paint, scale));
  },
  text: ({ at, text, size, anchor, bold, fill }, { canvas, to, scale }) =>
    canvas.text(to(at), text, { size: size * scale * POINTS_PER_MM, face: bold ? 'bold' : 'regular', ink: fill, anchor }),
  group: ({ shapes }, pen) => {
    for (const shape of shapes) drawShape(shape, pen);
  },
};

const drawShape = (shape: Shape, pen: Pen): void => (DRAW[shape.kind] as (one: Shape, pen: Pen) => void)(shape, pen);

const styleOf = ({ fill, stroke, width = 0.25, dashed = false }: Paint, scale: number): BoxStyle => ({
  ...(fill ? { fill } : {}),
  ...(stroke ? { stroke } : {}),
  line: width * scale,
  dashed,
});

/** Draws a scene with its upper left corner at `at`; `scale` 1 is the size the scene says, mm for mm. */
export function drawScene(canvas: Canvas, scene: Scene, at: At, scale = 1): void {
  const to = (one: At): At => ({ x: at.x + one.x * scale, y: at.y + one.y * scale });
  for (const shape of scene.shapes) drawShape(shape, { canvas, to, scale });
}
