/** What the arm does to the steel, and whether socket and arm find room. */
export { chordPitch, socketRoom, wallRoom } from './clearance.ts';
export { boltBending, reactionForce, skewContact, tiltingMoment } from './reaction.ts';
