import { readFileSync } from 'node:fs';
import { planJob } from '@clampwright/core';
import { jointDrawing, readJob } from '@clampwright/papers';
import { describe, expect, test } from 'vitest';
import { boltPlaces } from './bolt-places.ts';

const { job } = readJob((path) => {
  try {
    return new Uint8Array(readFileSync(`demo/${path}`));
  } catch {
    return 'missing';
  }
});
const joints = planJob(job!).joints;

/** Where the card draws the bolts: the middle of its hexagons, in the order of the bolts. */
const onCard = (tag: string) =>
  jointDrawing(joints.find((one) => one.tag === tag)!, 100, 100, 'under')
    .shapes.filter((shape) => shape.kind === 'polyline' && shape.closed && shape.points.length === 6)
    .map((shape) => {
      const { points } = shape as { points: readonly { x: number; y: number }[] };
      return { x: points.reduce((sum, { x }) => sum + x, 0) / 6, y: points.reduce((sum, { y }) => sum + y, 0) / 6 };
    });

describe.each(['FB-S1', 'TB-R1', 'PH-F1'])('boltPlaces() of %s', (tag) => {
  test('shows the bolts as the card does: the same is left, the same is up', () => {
    const joint = joints.find((one) => one.tag === tag)!;
    const [card, screen] = [onCard(tag).slice(0, joint.boltCount), boltPlaces(joint, 0)];
    expect(card).toHaveLength(screen.length);
    for (let bolt = 1; bolt < screen.length; bolt += 1)
      for (const axis of ['x', 'y'] as const) {
        const [there, here] = [card[bolt]![axis] - card[0]![axis], screen[bolt]![axis] - screen[0]![axis]];
        if (Math.abs(here) > 1) expect(Math.sign(there), `bolt ${bolt + 1}, ${axis}`).toBe(Math.sign(here));
      }
  });
  test('turns a quarter clockwise: what was up is right', () => {
    const joint = joints.find((one) => one.tag === tag)!;
    const [before, after] = [boltPlaces(joint, 0), boltPlaces(joint, 1)];
    for (const [at, { x, y }] of before.entries()) {
      expect(after[at]!.x).toBeCloseTo(-y, 9);
      expect(after[at]!.y).toBeCloseTo(x, 9);
    }
  });
});
