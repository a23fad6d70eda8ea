import { type Millimetre, mm2, type SquareMillimetre } from '../quantity.ts';

const TAN30 = Math.tan(Math.PI / 6);

/** Least and greatest diameters of the threads in engagement, mm. */
export interface Engagement {
  readonly pitch: Millimetre;
  /** m_eff, length of full engagement */
  readonly length: Millimetre;
  /** d_min, least major diameter of the bolt */
  readonly majorMin: Millimetre;
  /** d₂,min, least pitch diameter of the bolt */
  readonly pitchDiameterMin: Millimetre;
  /** D₁,max, greatest minor diameter of the nut */
  readonly nutMinorMax: Millimetre;
  /** D₂,max, greatest pitch diameter of the nut */
  readonly nutPitchDiameterMax: Millimetre;
}

/**
 * Shear area of the nut thread, at the tips of the bolt thread.
 *
 *     A_SGM = π·d·(m/P)·[P/2 + (d − D₂)·tan 30°]
 *
 * - d d_min, D₂ D₂,max, m length of engagement, P pitch, mm
 *
 * Source: Alexander 1977; VDI 2230-1:2015 section 5.5.5; ISO/TR 16224:2012.
 *
 * @example
 * const m6 = { pitch: mm(1), length: mm(4.9), majorMin: mm(5.794), pitchDiameterMin: mm(5.212), nutMinorMax: mm(5.153), nutPitchDiameterMax: mm(5.5) };
 * expect(nutShearArea(m6)).toBeCloseTo(59.74, 2);
 */
export const nutShearArea = ({
  pitch,
  length,
  majorMin,
  nutPitchDiameterMax,
}: Pick<Engagement, 'pitch' | 'length' | 'majorMin' | 'nutPitchDiameterMax'>): SquareMillimetre =>
  mm2(Math.PI * majorMin * (length / pitch) * (pitch / 2 + (majorMin - nutPitchDiameterMax) * TAN30));

/**
 * Shear area of the bolt thread, at the tips of the nut thread.
 *
 *     A_SGS = π·D₁·(m/P)·[P/2 + (d₂ − D₁)·tan 30°]
 *
 * - D₁ D₁,max, d₂ d₂,min, m length of engagement, P pitch, mm
 *
 * Source: as {@link nutShearArea}; FED-STD-H28/2B writes the same areas.
 *
 * @example
 * const m6 = { pitch: mm(1), length: mm(4.9), majorMin: mm(5.794), pitchDiameterMin: mm(5.212), nutMinorMax: mm(5.153), nutPitchDiameterMax: mm(5.5) };
 * expect(boltShearArea(m6)).toBeCloseTo(42.36, 2);
 */
export const boltShearArea = ({
  pitch,
  length,
  pitchDiameterMin,
  nutMinorMax,
}: Pick<Engagement, 'pitch' | 'length' | 'pitchDiameterMin' | 'nutMinorMax'>): SquareMillimetre =>
  mm2(Math.PI * nutMinorMax * (length / pitch) * (pitch / 2 + (pitchDiameterMin - nutMinorMax) * TAN30));
