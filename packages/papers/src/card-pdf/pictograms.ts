import type { CautionCode } from '@clampwright/core';
import type { At } from '../drawing/index.ts';
import type { Canvas } from '../pdf/canvas.ts';

/** Signs beside the cautions, ours: seen before the words are read. Drawn in a square of ten by ten. */
type Sign =
  | 'hand'
  | 'arm'
  | 'once'
  | 'lock'
  | 'cut-out'
  | 'tether'
  | 'drop'
  | 'steps'
  | 'mark'
  | 'ceiling'
  | 'gauge'
  | 'gap'
  | 'clock'
  | 'flame'
  | 'discard'
  | 'hold'
  | 'person';

const SIGN_OF: Readonly<Record<CautionCode, Sign>> = {
  'hands-off-arm': 'hand',
  'arm-against-point': 'arm',
  'never-lengthen-arm': 'arm',
  'one-pull-per-bolt': 'once',
  'arm-comes-free': 'arm',
  'direction-locked': 'lock',
  'cut-out-is-not-a-stall': 'cut-out',
  'tether-at-height': 'tether',
  'as-delivered-lubricant': 'drop',
  'wet-means-retest': 'drop',
  'first-step-before-second': 'steps',
  'mark-before-turning': 'mark',
  'never-above-method': 'ceiling',
  'spline-only-after-snug': 'steps',
  'pressure-isolated': 'gauge',
  'gap-after-each-pass': 'gap',
  'recheck-after-four-hours': 'clock',
  'no-value-without-engineer': 'person',
  'hazardous-area': 'flame',
  'discard-slackened': 'discard',
  'hold-the-other-part': 'hold',
};

interface Stroke {
  readonly points: readonly (readonly [number, number])[];
  readonly closed?: true;
  readonly fill?: true;
}
interface Drawn {
  readonly strokes: readonly Stroke[];
  readonly circles?: readonly { readonly at: readonly [number, number]; readonly radius: number; readonly fill?: true }[];
}

const ring = (sides: number, radius: number, turn = 0): (readonly [number, number])[] =>
  Array.from({ length: sides }, (_, i) => [
    5 + radius * Math.sin((i / sides) * 2 * Math.PI + turn),
    5 - radius * Math.cos((i / sides) * 2 * Math.PI + turn),
  ]);
const NO: Stroke = {
  points: [
    [1, 9],
    [9, 1],
  ],
};
const HEXAGON: Stroke = { points: ring(6, 3.6), closed: true };

const SIGNS: Readonly<Record<Sign, Drawn>> = {
  hand: {
    strokes: [
      {
        points: [
          [2.6, 9],
          [2.6, 4],
          [3.6, 4],
          [3.6, 2],
          [4.8, 2],
          [4.8, 1.4],
          [6, 1.4],
          [6, 2.2],
          [7.2, 2.2],
          [7.2, 9],
        ],
        closed: true,
      },
      NO,
    ],
  },
  arm: {
    strokes: [
      {
        points: [
          [3, 3.6],
          [8.6, 3.6],
          [8.6, 8.4],
          [7.2, 8.4],
          [7.2, 5],
          [3, 5],
        ],
        closed: true,
        fill: true,
      },
      {
        points: [
          [9.6, 5.4],
          [9.6, 9.6],
        ],
      },
    ],
    circles: [{ at: [2.6, 4.3], radius: 2 }],
  },
  once: {
    strokes: [
      {
        points: [
          [4, 3.4],
          [5.4, 2],
          [5.4, 8],
        ],
      },
    ],
    circles: [{ at: [5, 5], radius: 4.2 }],
  },
  lock: {
    strokes: [
      {
        points: [
          [2.4, 5],
          [7.6, 5],
          [7.6, 9.2],
          [2.4, 9.2],
        ],
        closed: true,
        fill: true,
      },
      {
        points: [
          [3.4, 5],
          [3.4, 2.4],
          [4.4, 1.2],
          [5.6, 1.2],
          [6.6, 2.4],
          [6.6, 5],
        ],
      },
    ],
  },
  'cut-out': {
    strokes: [
      {
        points: [
          [1.6, 3.4],
          [7.6, 3.4],
          [7.6, 7],
          [1.6, 7],
        ],
        closed: true,
      },
      {
        points: [
          [7.6, 4.4],
          [8.6, 4.4],
          [8.6, 6],
          [7.6, 6],
        ],
      },
      NO,
    ],
  },
  tether: {
    strokes: [
      {
        points: [
          [5, 0.8],
          [5, 3],
          [6.6, 4.2],
          [3.4, 5.4],
          [5, 6.6],
        ],
      },
      {
        points: [
          [3.2, 6.6],
          [6.8, 6.6],
          [6.8, 9.4],
          [3.2, 9.4],
        ],
        closed: true,
        fill: true,
      },
    ],
  },
  drop: {
    strokes: [
      {
        points: [
          [5, 0.8],
          [7.6, 5.2],
          [7.6, 7],
          [6.4, 8.8],
          [5, 9.2],
          [3.6, 8.8],
          [2.4, 7],
          [2.4, 5.2],
        ],
        closed: true,
      },
    ],
  },
  steps: {
    strokes: [
      {
        points: [
          [1, 9],
          [1, 6.4],
          [4, 6.4],
          [4, 3.8],
          [7, 3.8],
          [7, 1.2],
          [9, 1.2],
          [9, 9],
        ],
        closed: true,
      },
    ],
  },
  mark: {
    strokes: [
      HEXAGON,
      {
        points: [
          [5, 5],
          [9.4, 0.9],
        ],
      },
    ],
  },
  ceiling: {
    strokes: [
      {
        points: [
          [1, 1.6],
          [9, 1.6],
        ],
      },
      {
        points: [
          [5, 9.2],
          [5, 3.2],
        ],
      },
      {
        points: [
          [3.2, 5],
          [5, 3],
          [6.8, 5],
        ],
      },
    ],
  },
  gauge: {
    strokes: [
      {
        points: [
          [5, 5.4],
          [2.8, 3.4],
        ],
      },
      {
        points: [
          [4, 9.2],
          [6, 9.2],
        ],
      },
    ],
    circles: [
      { at: [5, 5], radius: 4.1 },
      { at: [5, 5.4], radius: 0.6, fill: true },
    ],
  },
  gap: {
    strokes: [
      {
        points: [
          [1, 1.4],
          [9, 1.4],
          [9, 3.8],
          [1, 3.8],
        ],
        closed: true,
        fill: true,
      },
      {
        points: [
          [1, 6.2],
          [9, 6.2],
          [9, 8.6],
          [1, 8.6],
        ],
        closed: true,
        fill: true,
      },
    ],
  },
  clock: {
    strokes: [
      {
        points: [
          [5, 2.2],
          [5, 5],
          [7.2, 6.4],
        ],
      },
    ],
    circles: [{ at: [5, 5], radius: 4.2 }],
  },
  flame: {
    strokes: [
      {
        points: [
          [5, 0.8],
          [7.8, 4.4],
          [8, 7],
          [6.6, 9.2],
          [3.4, 9.2],
          [2, 7],
          [2.6, 4.8],
          [4, 6],
          [4, 3.4],
        ],
        closed: true,
        fill: true,
      },
    ],
  },
  discard: {
    strokes: [
      {
        points: [
          [2.6, 3],
          [7.4, 3],
          [6.8, 9.2],
          [3.2, 9.2],
        ],
        closed: true,
      },
      {
        points: [
          [1.8, 3],
          [8.2, 3],
        ],
      },
      {
        points: [
          [4, 3],
          [4, 1.6],
          [6, 1.6],
          [6, 3],
        ],
      },
    ],
  },
  hold: {
    strokes: [
      HEXAGON,
      {
        points: [
          [0.8, 3.2],
          [0.8, 6.8],
        ],
      },
      {
        points: [
          [9.2, 3.2],
          [9.2, 6.8],
        ],
      },
    ],
  },
  person: {
    strokes: [
      {
        points: [
          [2, 9.2],
          [2.6, 6],
          [7.4, 6],
          [8, 9.2],
        ],
        closed: true,
        fill: true,
      },
    ],
    circles: [{ at: [5, 3.2], radius: 2 }],
  },
};

/** Draws the sign of a caution in a square of `size` mm. */
export function pictogram(canvas: Canvas, code: CautionCode, at: At, size: number): void {
  const unit = size / 10;
  const to = ([x, y]: readonly [number, number]): At => ({ x: at.x + x * unit, y: at.y + y * unit });
  const pen = { stroke: 'ink', line: 0.3 } as const;
  const { strokes, circles = [] } = SIGNS[SIGN_OF[code]];
  for (const { at: centre, radius, fill } of circles) canvas.circle(to(centre), radius * unit, fill ? { fill: 'ink' } : pen);
  for (const { points, closed = false, fill } of strokes) canvas.path(points.map(to), closed, fill ? { fill: 'ink' } : pen);
}
