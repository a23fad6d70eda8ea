import type { At, Paint, Role, Shape } from './scene.ts';

/** What has become of a bolt. */
export type BoltState = 'open' | 'begun' | 'done';

/** How the bolts of a drawing look: how far each has come, and whether something is said of it. */
export interface BoltLook {
  readonly state: (bolt: number) => BoltState;
  readonly spokenOf: (bolt: number) => boolean;
}

const PAINT: Readonly<Record<BoltState, Paint>> = {
  open: { fill: 'paper' },
  begun: { fill: 'paper', dashed: true },
  done: { fill: 'ink' },
};

/** Paint of a bolt; light where nothing is told of what was done. */
export const lightOr = (look: BoltLook | undefined, bolt: number): Paint => PAINT[look?.state(bolt) ?? 'open'];

/** Ink of a number in its hexagon. */
export const inkOn = (look: BoltLook | undefined, bolt: number): Role => (look?.state(bolt) === 'done' ? 'paper' : 'ink');

/** A ring about each bolt that something is said of. */
export const ringsOf = (look: BoltLook | undefined, bolts: readonly number[], at: (bolt: number) => At, flats: number): Shape[] =>
  bolts
    .filter((bolt) => look?.spokenOf(bolt))
    .map((bolt) => ({ kind: 'circle', centre: at(bolt), radius: flats * 0.72, paint: { stroke: 'mark', width: 0.7 } }));
