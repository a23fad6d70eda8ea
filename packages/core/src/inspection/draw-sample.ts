import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { Draws, MOST_SEED } from '../random/draws.ts';
import { drawSome } from '../random/shuffle.ts';

/** A joint from which bolts are drawn. */
export interface InspectedJoint {
  readonly tag: string;
  readonly bolts: number;
}

/** Bolts drawn for inspection; the seed is recorded, so that anybody draws the same. */
export interface DrawnSample {
  readonly seed: number;
  readonly size: number;
  /** every joint with its drawn bolts, 1-based, rising */
  readonly joints: readonly { readonly tag: string; readonly bolts: readonly number[] }[];
}

/** The stream that says which joints get one more than their share. */
const REST = 0xffff_ffff;

/**
 * Draws bolts in proportion to each joint's size, at least one from each where the sample allows: every joint is seen. What proportions
 * leave over falls to joints drawn by the seed.
 *
 * Refuses a sample larger than there are bolts, or not above zero, and seeds that cannot be counted. Same joints, size and seed: same
 * bolts, in whatever order the joints came.
 *
 * @example
 * const drawn = drawSample([{ tag: 'A', bolts: 8 }, { tag: 'B', bolts: 72 }], 8, 7);
 * expect(drawn.value.joints.map(({ bolts }) => bolts.length)).toEqual([1, 7]);
 */
export function drawSample(joints: readonly InspectedJoint[], size: number, seed: number): Outcome<DrawnSample> {
  const all = joints.reduce((sum, { bolts }) => sum + bolts, 0);
  if (!Number.isInteger(size) || size < 1 || size > all) return refused(notice('sample-size', { size: String(size), bolts: all }));
  if (!Number.isInteger(seed) || seed < 0 || seed > MOST_SEED) return refused(notice('sample-seed', { seed: String(seed) }));
  const order = [...joints].sort((a, b) => (a.tag < b.tag ? -1 : a.tag > b.tag ? 1 : 0));
  const counts = shares(order, size, seed);
  const draws = new Draws(seed);
  return done({
    seed,
    size,
    joints: order.map(({ tag, bolts }, at) => {
      draws.start(0, at);
      const places = Array.from({ length: bolts }, (_, i) => i + 1);
      return { tag, bolts: drawSome(places, counts[at]!, draws).sort((a, b) => a - b) };
    }),
  });
}

/** In proportion to the bolts of each joint, and one at least where there are enough. */
function shares(joints: readonly InspectedJoint[], size: number, seed: number): number[] {
  const exact = exactShares(joints, size);
  const whole = exact.map(Math.floor);
  const draws = new Draws(seed);
  draws.start(0, REST);
  const places = drawSome([...joints.keys()], joints.length, draws);
  // whose share was cut down most gets one more; a draw decides between equals
  places.sort((a, b) => fraction(exact[b]!) - fraction(exact[a]!));
  let left = size - whole.reduce((sum, share) => sum + share, 0);
  for (let turn = 0; left > 0; turn += 1) {
    const at = places[turn % places.length]!;
    if (whole[at]! >= joints[at]!.bolts) continue;
    whole[at]! += 1;
    left -= 1;
  }
  return whole;
}

/** Joints whose part would be less than one bolt get one; the others share what is left, until none of them falls below one. */
function exactShares(joints: readonly InspectedJoint[], size: number): number[] {
  const exact = joints.map(() => 0);
  if (size < joints.length) return exact;
  let open = [...joints.keys()];
  let left = size;
  for (;;) {
    const all = open.reduce((sum, at) => sum + joints[at]!.bolts, 0);
    for (const at of open) exact[at] = (left * joints[at]!.bolts) / all;
    const small = open.filter((at) => exact[at]! < 1);
    if (small.length === 0) return exact;
    for (const at of small) exact[at] = 1;
    left -= small.length;
    open = open.filter((at) => !small.includes(at));
  }
}

const fraction = (share: number) => share - Math.floor(share);
