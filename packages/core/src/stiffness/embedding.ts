import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

export type Roughness = 'Rz<10' | '10<=Rz<40' | '40<=Rz<160';
export type Loading = 'axial' | 'shear';

export const EMBEDDING_SOURCE: Source = { standard: 'VDI 2230-1', edition: '2003', clause: 'Table 5 (guide values)', provenance: 'memory' };

/** µm in the thread, at each head or nut face, at each inner interface. */
const GUIDE: Readonly<Record<Loading, Readonly<Record<Roughness, readonly [thread: number, face: number, interfaceOf: number]>>>> = {
  axial: { 'Rz<10': [3, 2.5, 1.5], '10<=Rz<40': [3, 3, 2], '40<=Rz<160': [3, 4, 3] },
  shear: { 'Rz<10': [3, 3, 2], '10<=Rz<40': [3, 4.5, 2.5], '40<=Rz<160': [3, 6.5, 3.5] },
};

export type EmbeddingPlace = 'thread' | 'face' | 'interface';
const COLUMN: Readonly<Record<EmbeddingPlace, 0 | 1 | 2>> = { thread: 0, face: 1, interface: 2 };

const MICROMETRE = 0.001;

/** Guide value of embedding at one place, mm. */
export const embeddingAt = (load: Loading, roughness: Roughness, place: EmbeddingPlace): Millimetre =>
  mm(MICROMETRE * GUIDE[load][roughness][COLUMN[place]]);

/**
 * Embedding of a joint: f_Z = thread + faces + inner interfaces, mm.
 *
 * @example
 * expect(1000 * embeddingOf('axial', '10<=Rz<40', 1, 1)).toBeCloseTo(8, 9);
 */
export const embeddingOf = (load: Loading, roughness: Roughness, faces: number, interfaces: number): Millimetre =>
  mm(
    embeddingAt(load, roughness, 'thread') +
      faces * embeddingAt(load, roughness, 'face') +
      interfaces * embeddingAt(load, roughness, 'interface'),
  );

/** Totals of an older scheme by number of interfaces with the thread, µm, 2 to 6: another bookkeeping, kept for old sheets. VDI 2230:1986. */
const OLDER: Readonly<Record<'turned' | 'ground', readonly number[]>> = { turned: [13, 16, 20, 25, 30], ground: [10, 12, 14, 16, 18] };

export function olderEmbedding(finish: 'turned' | 'ground', interfaces: number): Millimetre | undefined {
  const value = OLDER[finish][interfaces - 2];
  return value === undefined ? undefined : mm(MICROMETRE * value);
}
