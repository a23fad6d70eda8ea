import type { Measure } from './measure.ts';

/**
 * stop: no tightening with this. hold: waits for a person or paper. attention: may go on, must be read.
 * fault: a place in the input that could not be taken.
 */
export type Level = 'stop' | 'hold' | 'attention' | 'fault';

export type Param = string | number | Measure;

/** The level of a notice, and (in the type only) the parameters its text needs. */
export interface Kind<P extends Record<string, Param>, L extends Level = Level> {
  readonly level: L;
  readonly params?: P;
}
// biome-ignore lint/complexity/noBannedTypes: a notice without parameters has the empty object as its parameters
type None = {};
export const stop = <P extends Record<string, Param> = None>(): Kind<P, 'stop'> => ({ level: 'stop' });
export const hold = <P extends Record<string, Param> = None>(): Kind<P, 'hold'> => ({ level: 'hold' });
export const attention = <P extends Record<string, Param> = None>(): Kind<P, 'attention'> => ({ level: 'attention' });
export const fault = <P extends Record<string, Param> = None>(): Kind<P, 'fault'> => ({ level: 'fault' });
