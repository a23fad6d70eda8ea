import type { Source } from '../source.ts';

/** Printed scatter of preload about its nominal value, by method. */
export interface PreloadUncertainty {
  readonly method: string;
  /** ± share of the nominal preload */
  readonly share: number;
  readonly source: Source;
}

const nasa: Source = { standard: 'NASA NSTS 08307', edition: 'A', clause: 'preload uncertainty', provenance: 'published' };
const machinery: Source = { standard: 'Machinery’s Handbook', clause: 'accuracy of preload by method', provenance: 'published' };

/**
 * Scatter of preload by method of tightening, as two sources print it. They contradict each other on ultrasonic measurement: 10 % and 1 %.
 *
 * @example
 * expect(PRELOAD_UNCERTAINTIES.find(({ method }) => method === 'torque, lubricated').share).toBe(0.25);
 */
export const PRELOAD_UNCERTAINTIES: readonly PreloadUncertainty[] = [
  { method: 'torque, unlubricated', share: 0.35, source: nasa },
  { method: 'torque, cadmium plated', share: 0.3, source: nasa },
  { method: 'torque, lubricated', share: 0.25, source: nasa },
  { method: 'hydraulic tensioner', share: 0.15, source: nasa },
  { method: 'preload indicating washer', share: 0.1, source: nasa },
  { method: 'ultrasonic', share: 0.1, source: nasa },
  { method: 'bolt elongation', share: 0.05, source: nasa },
  { method: 'by feel', share: 0.35, source: machinery },
  { method: 'torque wrench', share: 0.25, source: machinery },
  { method: 'turn of nut', share: 0.15, source: machinery },
  { method: 'preload indicating washer', share: 0.1, source: machinery },
  { method: 'yield-point sensing', share: 0.08, source: machinery },
  { method: 'strain gauges', share: 0.01, source: machinery },
  { method: 'ultrasonic', share: 0.01, source: machinery },
];
