import type { Joint, Layout } from '../job/job.ts';
import { type Notice, notice } from '../notice/index.ts';
import { force, length, torque } from '../notice/measure.ts';
import { type Millimetre, mm } from '../quantity.ts';
import { chordPitch, socketRoom, wallRoom } from '../reaction/clearance.ts';
import type { Context } from './context.ts';
import type { StepPlan } from './plan.ts';

/** Does the arm hold, does its point hold, does the socket go on? Each tool of the joint at its highest torque, on the hexagon it turns. */
export function reachNotices(context: Context, joint: Joint, acrossFlats: Millimetre | undefined, steps: readonly StepPlan[]): Notice[] {
  const notices: Notice[] = [];
  for (const serial of new Set(steps.flatMap(({ setting }) => (setting ? [setting.tool] : [])))) {
    const tool = context.toolBySerial.get(serial)?.tool;
    const strongest = steps
      .flatMap(({ setting }) => (setting?.tool === serial ? [setting] : []))
      .reduce((most, one) => (one.torque > most.torque ? one : most));
    if (!tool) continue;
    if (tool.kind !== 'click wrench') {
      if (strongest.reaction === undefined) notices.push(notice('arm-length-unknown', { serial }));
      else if (joint.access.reactionLimit !== undefined && strongest.reaction > joint.access.reactionLimit) {
        notices.push(
          notice('reaction-point-overloaded', { force: force(strongest.reaction), limit: force(joint.access.reactionLimit) }, joint.place),
        );
      } else if (joint.access.reactionPoint === undefined) {
        notices.push(notice('reaction-point-unknown', { force: force(strongest.reaction) }, joint.place));
      }
      if (tool.armRating !== undefined && strongest.torque > tool.armRating) {
        notices.push(notice('arm-overloaded', { torque: torque(strongest.torque), rating: torque(tool.armRating) }));
      }
    }
    if (acrossFlats !== undefined) notices.push(...socketNotices(joint, acrossFlats, tool.sockets));
  }
  return notices;
}

function socketNotices(
  joint: Joint,
  acrossFlats: Millimetre,
  sockets: readonly { readonly acrossFlats: Millimetre; readonly outerDiameter: Millimetre }[],
): Notice[] {
  if (sockets.length === 0) return [];
  const socket = sockets.find((one) => Math.abs(one.acrossFlats - acrossFlats) < 0.3);
  if (!socket) return [notice('socket-unknown', { acrossFlats: length(acrossFlats) })];
  const notices: Notice[] = [];
  const pitch = smallestPitch(joint.layout);
  const room = pitch === undefined ? undefined : socketRoom(pitch, socket.outerDiameter, acrossFlats);
  if (pitch !== undefined && room !== undefined && room < 0) {
    const lacking = length(mm(0 - room));
    notices.push(notice('socket-does-not-fit', { socket: length(socket.outerDiameter), pitch: length(pitch), lacking }, joint.place));
  }
  const { wall } = joint.access;
  if (wall !== undefined && wallRoom(wall, socket.outerDiameter) < 0) {
    notices.push(notice('socket-meets-wall', { socket: length(socket.outerDiameter), wall: length(wall) }, joint.place));
  }
  return notices;
}

/** Distance of the two nearest bolts; a ring without a bolt circle has none. */
export function smallestPitch(layout: Layout): Millimetre | undefined {
  if (layout.kind === 'ring')
    return layout.circle === undefined || layout.boltCount < 2 ? undefined : chordPitch(layout.circle, layout.boltCount);
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of layout.bolts.entries()) {
    for (const b of layout.bolts.slice(i + 1)) least = Math.min(least, Math.hypot(a.x - b.x, a.y - b.y));
  }
  return Number.isFinite(least) ? mm(least) : undefined;
}
