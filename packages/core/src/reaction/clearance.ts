import { cornersOf } from '../fasteners/hexagon.ts';
import { type Millimetre, mm } from '../quantity.ts';

/**
 * Room left between a socket and the neighbouring hexagon, mm; negative: it does not go on.
 *
 *     room = pitch − D_socket/2 − e/2        e = s/cos 30°, the neighbour turned the worst way
 *
 * Source: geometry.
 *
 * @example
 * expect(socketRoom(mm(70), mm(58), mm(41))).toBeCloseTo(17.3, 1);
 */
export const socketRoom = (pitch: Millimetre, socketDiameter: Millimetre, acrossFlats: Millimetre): Millimetre =>
  mm(pitch - socketDiameter / 2 - cornersOf(acrossFlats) / 2);

/** Room between a socket and a wall at `distance` from the bolt axis, mm. */
export const wallRoom = (distance: Millimetre, socketDiameter: Millimetre): Millimetre => mm(distance - socketDiameter / 2);

/**
 * Distance between neighbours on a bolt circle, along the chord: p = K·sin(π/n), mm.
 *
 * @example
 * expect(chordPitch(mm(200), 8)).toBeCloseTo(76.54, 2);
 */
export const chordPitch = (circle: Millimetre, boltCount: number): Millimetre =>
  mm(boltCount < 2 ? Number.MAX_SAFE_INTEGER : circle * Math.sin(Math.PI / boltCount));
