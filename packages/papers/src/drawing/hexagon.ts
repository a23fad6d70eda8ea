import { type At, around, type Paint, type Shape } from './scene.ts';

/** A bolt from above, seen on its hexagon. */
export const hexagon = (centre: At, acrossFlats: number, paint: Paint): Shape => ({
  kind: 'polyline',
  closed: true,
  points: Array.from({ length: 6 }, (_, i) => around(centre, acrossFlats / Math.sqrt(3), (i * Math.PI) / 3 + Math.PI / 6)),
  paint,
});
