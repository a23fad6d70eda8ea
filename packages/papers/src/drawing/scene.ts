/** A drawing in millimetres of paper, y downwards, angles clockwise from twelve o'clock. Back ends turn it into SVG or PDF. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** said aloud in place of the drawing */
  readonly title: string;
  readonly shapes: readonly Shape[];
}

export interface At {
  readonly x: number;
  readonly y: number;
}

/** What a stroke or a fill stands for; a back end gives it a colour. `quiet` is ink that steps back. */
export type Role = 'ink' | 'quiet' | 'paper' | 'mark';

export interface Paint {
  readonly stroke?: Role;
  readonly fill?: Role;
  readonly width?: number;
  readonly dashed?: boolean;
}

export interface TextShape {
  readonly kind: 'text';
  /** on the base line */
  readonly at: At;
  readonly text: string;
  /** height of the em, mm */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly fill: Role;
}

export type Shape =
  | { readonly kind: 'circle'; readonly centre: At; readonly radius: number; readonly paint: Paint }
  | { readonly kind: 'line'; readonly from: At; readonly to: At; readonly paint: Paint }
  | { readonly kind: 'polyline'; readonly points: readonly At[]; readonly closed: boolean; readonly paint: Paint }
  | {
      readonly kind: 'arc';
      readonly centre: At;
      readonly radius: number;
      readonly from: number;
      readonly to: number;
      readonly paint: Paint;
    }
  | TextShape
  | { readonly kind: 'group'; readonly shapes: readonly Shape[] };

/** The point at `angle` on a circle, clockwise from twelve o'clock. */
export const around = (centre: At, radius: number, angle: number): At => ({
  x: centre.x + radius * Math.sin(angle),
  y: centre.y - radius * Math.cos(angle),
});

/** Every shape that is drawn, groups opened. */
export const flatten = (shapes: readonly Shape[]): Exclude<Shape, { kind: 'group' }>[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? flatten(shape.shapes) : [shape]));
