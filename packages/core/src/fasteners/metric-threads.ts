import { type Millimetre, mm, mm2 } from '../quantity.ts';
import type { Source } from '../source.ts';
import type { Thread } from './thread.ts';

const pitches: Source = { standard: 'ISO 261', edition: '1998', clause: 'Table 1; ISO 262:1998', provenance: 'memory' };
const coarseArea: Source = { standard: 'ISO 261', edition: '1998', clause: 'stress area: ISO 898-1:2013 Table 4', provenance: 'published' };
const fineArea: Source = { standard: 'ISO 261', edition: '1998', clause: 'stress area: ISO 898-1:2013 Table 6', provenance: 'memory' };

/** d, P, mm, and the stress area as ISO 898-1 prints it, mm². The largest coarse size is M68. */
const COARSE: readonly (readonly [d: number, pitch: number, area?: number])[] = [
  [1.6, 0.35],
  [1.8, 0.35],
  [2, 0.4],
  [2.2, 0.45],
  [2.5, 0.45],
  [3, 0.5, 5.03],
  [3.5, 0.6, 6.78],
  [4, 0.7, 8.78],
  [4.5, 0.75],
  [5, 0.8, 14.2],
  [6, 1, 20.1],
  [7, 1, 28.9],
  [8, 1.25, 36.6],
  [9, 1.25],
  [10, 1.5, 58.0],
  [11, 1.5],
  [12, 1.75, 84.3],
  [14, 2, 115],
  [16, 2, 157],
  [18, 2.5, 192],
  [20, 2.5, 245],
  [22, 2.5, 303],
  [24, 3, 353],
  [27, 3, 459],
  [30, 3.5, 561],
  [33, 3.5, 694],
  [36, 4, 817],
  [39, 4, 976],
  [42, 4.5],
  [45, 4.5],
  [48, 5],
  [52, 5],
  [56, 5.5],
  [60, 5.5],
  [64, 6],
  [68, 6],
];

/** Fine pitches of ISO 261 by diameter, mm, largest first. */
const FINE: readonly (readonly [d: number, ...pitches: number[]])[] = [
  [3, 0.35],
  [4, 0.5],
  [5, 0.5],
  [6, 0.75],
  [8, 1, 0.75],
  [10, 1.25, 1, 0.75],
  [12, 1.5, 1.25, 1],
  [14, 1.5, 1.25, 1],
  [16, 1.5, 1],
  [18, 2, 1.5, 1],
  [20, 2, 1.5, 1],
  [22, 2, 1.5, 1],
  [24, 2, 1.5, 1],
  [27, 2, 1.5, 1],
  [30, 3, 2, 1.5, 1],
  [33, 3, 2, 1.5],
  [36, 3, 2, 1.5],
  [39, 3, 2, 1.5],
  [42, 4, 3, 2, 1.5],
  [45, 4, 3, 2, 1.5],
  [48, 4, 3, 2, 1.5],
  [52, 4, 3, 2, 1.5],
  [56, 4, 3, 2, 1.5],
  [60, 4, 3, 2, 1.5],
  [64, 4, 3, 2, 1.5],
  [68, 4, 3, 2, 1.5],
  [72, 6, 4, 3, 2, 1.5],
  [76, 6, 4, 3, 2, 1.5],
  [80, 6, 4, 3, 2, 1.5],
  [85, 6, 4, 3, 2],
  [90, 6, 4, 3, 2],
  [95, 6, 4, 3, 2],
  [100, 6, 4, 3, 2],
];

/** Stress areas of fine threads as ISO 898-1 Table 6 prints them, mm². */
const FINE_AREA: Readonly<Record<string, number>> = {
  'M8×1': 39.2,
  'M10×1.25': 61.2,
  'M10×1': 64.5,
  'M12×1.5': 88.1,
  'M12×1.25': 92.1,
  'M14×1.5': 125,
  'M16×1.5': 167,
  'M18×1.5': 216,
  'M20×1.5': 272,
  'M22×1.5': 333,
  'M24×2': 384,
  'M27×2': 496,
  'M30×2': 621,
  'M33×2': 761,
  'M36×3': 865,
  'M39×3': 1030,
};

const coarse = ([d, pitch, area]: (typeof COARSE)[number]): Thread => ({
  designation: `M${d}`,
  series: 'coarse',
  diameter: mm(d),
  pitch: mm(pitch),
  ...(area === undefined ? { source: pitches } : { printedStressArea: mm2(area), source: coarseArea }),
});

function fine(d: number, pitch: number): Thread {
  const designation = `M${d}×${pitch}`;
  const area = FINE_AREA[designation];
  return {
    designation,
    series: 'fine',
    diameter: mm(d),
    pitch: mm(pitch),
    ...(area === undefined ? { source: pitches } : { printedStressArea: mm2(area), source: fineArea }),
  };
}

/**
 * ISO metric threads, coarse M1.6 to M68 and fine M3 to M100. M72 and above have no coarse pitch.
 * Source: ISO 261:1998, ISO 262:1998; printed stress areas ISO 898-1:2013 Tables 4 and 6.
 */
export const METRIC_THREADS: readonly Thread[] = [
  ...COARSE.map(coarse),
  ...FINE.flatMap(([d, ...all]) => all.map((pitch) => fine(d, pitch))),
];

/**
 * A metric thread by diameter and pitch; without a pitch, the coarse one. `undefined`: ISO 261 lists none.
 *
 * @example
 * expect(metricThread(mm(24)).pitch).toBe(3);
 * expect(metricThread(mm(24), mm(2)).designation).toBe('M24×2');
 * expect(metricThread(mm(72))).toBeUndefined();
 */
export const metricThread = (diameter: Millimetre, pitch?: Millimetre): Thread | undefined =>
  METRIC_THREADS.find(
    (thread) => thread.diameter === diameter && (pitch === undefined ? thread.series === 'coarse' : thread.pitch === pitch),
  );

/** Every pitch ISO 261 lists for a diameter, largest first. */
export const metricPitches = (diameter: Millimetre): readonly Millimetre[] =>
  METRIC_THREADS.filter((thread) => thread.diameter === diameter)
    .map(({ pitch }) => pitch)
    .sort((a, b) => b - a);
