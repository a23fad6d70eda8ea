/** One drawing scene in millimetres of paper, and its back ends. */
export { jointDrawing } from './joint-drawing.ts';
export type { BoltLook, BoltState } from './look.ts';
export type { At, Paint, Role, Scene, Shape } from './scene.ts';
export { toSvg } from './svg.ts';
export { workDrawing } from './work-drawing.ts';
