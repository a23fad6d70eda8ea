/**
 * Quantities. Inside the product: N, mm, MPa, N·mm, rad, and nothing else. Conversion happens once, at the edge,
 * through the constructors (`kN(220)`) and readers (`inKilonewton(force)`) below.
 */
declare const unit: unique symbol;
export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Newton = Quantity<'N'>;
export type Millimetre = Quantity<'mm'>;
export type SquareMillimetre = Quantity<'mm²'>;
export type Megapascal = Quantity<'MPa'>;
export type NewtonMillimetre = Quantity<'N·mm'>;
export type Radian = Quantity<'rad'>;

/** Exact by definition: 1 in = 25.4 mm; 1 lbf = 0.453 592 37 kg × 9.806 65 m/s² (international yard and pound, 1959). */
const MM_PER_INCH = 25.4;
const N_PER_LBF = 0.45359237 * 9.80665;
const MPA_PER_KSI = (1000 * N_PER_LBF) / MM_PER_INCH ** 2;
const NMM_PER_LBF_FT = N_PER_LBF * 12 * MM_PER_INCH;
const RAD_PER_DEGREE = Math.PI / 180;

export const N = (value: number) => value as Newton;
export const kN = (value: number) => (value * 1000) as Newton;
export const lbf = (value: number) => (value * N_PER_LBF) as Newton;
export const kip = (value: number) => (value * 1000 * N_PER_LBF) as Newton;

export const mm = (value: number) => value as Millimetre;
export const inch = (value: number) => (value * MM_PER_INCH) as Millimetre;

export const mm2 = (value: number) => value as SquareMillimetre;
export const inch2 = (value: number) => (value * MM_PER_INCH ** 2) as SquareMillimetre;

export const MPa = (value: number) => value as Megapascal;
export const ksi = (value: number) => (value * MPA_PER_KSI) as Megapascal;
export const psi = (value: number) => (value * (MPA_PER_KSI / 1000)) as Megapascal;

export const Nmm = (value: number) => value as NewtonMillimetre;
export const Nm = (value: number) => (value * 1000) as NewtonMillimetre;
export const lbfFt = (value: number) => (value * NMM_PER_LBF_FT) as NewtonMillimetre;

/** 1 kgf = 9.806 65 N, exact (standard gravity). */
export const kgfM = (value: number) => (value * 9.80665 * 1000) as NewtonMillimetre;

export const rad = (value: number) => value as Radian;
export const degrees = (value: number) => (value * RAD_PER_DEGREE) as Radian;

export const inKilonewton = (force: Newton) => force / 1000;
export const inLbf = (force: Newton) => force / N_PER_LBF;
export const inKip = (force: Newton) => force / (1000 * N_PER_LBF);
export const inInch = (length: Millimetre) => length / MM_PER_INCH;
export const inInch2 = (area: SquareMillimetre) => area / MM_PER_INCH ** 2;
export const inKsi = (stress: Megapascal) => stress / MPA_PER_KSI;
export const inPsi = (stress: Megapascal) => stress / (MPA_PER_KSI / 1000);
export const inNewtonMetre = (torque: NewtonMillimetre) => torque / 1000;
export const inLbfFt = (torque: NewtonMillimetre) => torque / NMM_PER_LBF_FT;
export const inDegrees = (angle: Radian) => angle / RAD_PER_DEGREE;
