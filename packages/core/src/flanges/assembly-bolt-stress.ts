import { type Notice, notice } from '../notice/index.ts';
import { stress as stressOf } from '../notice/measure.ts';
import { type Megapascal, type Millimetre, MPa, type Radian, type SquareMillimetre } from '../quantity.ts';
import type { Source } from '../source.ts';

export const assemblyBoltStressSource: Source = { standard: 'ASME PCC-1', edition: '2013', clause: 'Appendix O', provenance: 'memory' };
/** Share of the assembly gasket stress left in service, where no better figure is known. */
export const USUAL_REMAINING_SHARE = 0.7;
/** Usual limits of the assembly bolt stress, shares of the bolt's ambient yield strength. */
export const USUAL_BOLT_LIMITS = { least: [0.2, 0.4], greatest: [0.4, 0.7] } as const;

export interface AssemblyBoltStressInput {
  /** A_g */
  readonly gasketArea: SquareMillimetre;
  /** root area of one bolt, A_b */
  readonly boltArea: SquareMillimetre;
  /** n_b */
  readonly bolts: number;
  /** S_gT */
  readonly targetGasketStress: Megapascal;
  /** S_b,min and S_b,max */
  readonly boltLimits: { readonly least: Megapascal; readonly greatest: Megapascal };
  /** S_gmin-S */
  readonly seatingStress: Megapascal;
  /** S_gmin-O with P_max, gasket inside diameter, and φ_g */
  readonly operating: {
    readonly gasketStress: Megapascal;
    readonly pressure: Megapascal;
    readonly innerDiameter: Millimetre;
    readonly remainingShare?: number;
  };
  /** S_gmax */
  readonly greatestGasketStress: Megapascal;
  /** S_f,max: bolt stress the flanges bear; with their rotation there and the rotation the gasket bears, step 8 is checked too */
  readonly flange?: { readonly greatest: Megapascal; readonly rotation?: { readonly there: Radian; readonly allowed: Radian } };
}

export interface StressCheck {
  readonly name: 'seating' | 'operating' | 'gasket crush' | 'flange rotation';
  readonly needs: 'at least' | 'at most';
  readonly limit: Megapascal;
  readonly ok: boolean;
}

export interface AssemblyBoltStress {
  /** what the gasket's target stress alone asks for */
  readonly wanted: Megapascal;
  /** after the limits of bolt and flange */
  readonly selected: Megapascal;
  readonly governedBy: 'gasket' | 'greatest' | 'least' | 'flange';
  /** steps 5 to 8; a failed one is for the designer, nothing is clipped to please it */
  readonly checks: readonly StressCheck[];
  readonly notices: readonly Notice[];
}

/**
 * Assembly bolt stress of a flanged joint, by the joint component approach; stress on the root area.
 *
 *     1  S_bsel = S_gT·A_g/(n_b·A_b)
 *     2–4  not above S_b,max, not below S_b,min, not above S_f,max
 *     5  S_bsel ≥ S_gmin-S·A_g/(A_b·n_b)                              seating
 *     6  S_bsel ≥ (S_gmin-O·A_g + π/4·P_max·G_ID²)/(φ_g·A_b·n_b)       operating
 *     7  S_bsel ≤ S_gmax·A_g/(A_b·n_b)                                gasket crush
 *     8  S_bsel ≤ S_f,max·θ_g,max/θ_f,max                             rotation
 *
 * The torque of step 9 follows by `torqueForPreload` from F = S_bsel·A_b. Source: ASME PCC-1:2013 Appendix O (from memory).
 *
 * @example
 * const found = assemblyBoltStress({
 *   gasketArea: gasketArea(inch(5), inch(4)), boltArea: inch2(0.302), bolts: 8, targetGasketStress: ksi(30),
 *   boltLimits: { least: ksi(42), greatest: ksi(73.5) }, seatingStress: ksi(20), greatestGasketStress: ksi(40),
 *   operating: { gasketStress: ksi(14), pressure: psi(740), innerDiameter: inch(4) },
 * });
 * expect(inKsi(found.wanted)).toBeCloseTo(87.77, 2);
 * expect(inKsi(found.selected)).toBeCloseTo(73.5, 6);
 * expect(found.checks.every(({ ok }) => ok)).toBe(true);
 */
export function assemblyBoltStress(input: AssemblyBoltStressInput): AssemblyBoltStress {
  const { gasketArea, boltArea, bolts, boltLimits, flange } = input;
  const onBolts = (gasketStress: number) => MPa((gasketStress * gasketArea) / (bolts * boltArea));
  const wanted = onBolts(input.targetGasketStress);
  const { selected, governedBy } = limited(wanted, boltLimits, flange?.greatest);
  const checks = checksOf(input, selected, onBolts);
  const notices: Notice[] = checks.filter(({ ok }) => !ok).map((failed) => noticeFor(failed, selected));
  if (governedBy !== 'gasket') {
    notices.unshift(notice('assembly-stress-limited', { wanted: stressOf(wanted), selected: stressOf(selected), by: governedBy }));
  }
  return { wanted, selected, governedBy, checks, notices };
}

/** Steps 2 to 4, in that order: the later limit has the last word. */
function limited(wanted: Megapascal, bolt: AssemblyBoltStressInput['boltLimits'], flange: Megapascal | undefined) {
  let found: Pick<AssemblyBoltStress, 'selected' | 'governedBy'> = { selected: wanted, governedBy: 'gasket' };
  if (found.selected > bolt.greatest) found = { selected: bolt.greatest, governedBy: 'greatest' };
  if (found.selected < bolt.least) found = { selected: bolt.least, governedBy: 'least' };
  if (flange !== undefined && found.selected > flange) found = { selected: flange, governedBy: 'flange' };
  return found;
}

function checksOf(
  input: AssemblyBoltStressInput,
  selected: Megapascal,
  onBolts: (gasketStress: number) => Megapascal,
): readonly StressCheck[] {
  const { operating, flange } = input;
  const endForce = (Math.PI / 4) * operating.pressure * operating.innerDiameter ** 2;
  const share = operating.remainingShare ?? USUAL_REMAINING_SHARE;
  const atLeast = (name: StressCheck['name'], limit: Megapascal): StressCheck => ({
    name,
    needs: 'at least',
    limit,
    ok: selected >= limit,
  });
  const atMost = (name: StressCheck['name'], limit: Megapascal): StressCheck => ({ name, needs: 'at most', limit, ok: selected <= limit });
  return [
    atLeast('seating', onBolts(input.seatingStress)),
    atLeast('operating', MPa(onBolts(operating.gasketStress + endForce / input.gasketArea) / share)),
    atMost('gasket crush', onBolts(input.greatestGasketStress)),
    ...(flange?.rotation ? [atMost('flange rotation', MPa((flange.greatest * flange.rotation.allowed) / flange.rotation.there))] : []),
  ];
}

function noticeFor({ name, limit }: StressCheck, selected: Megapascal): Notice {
  const params = { stress: stressOf(selected), limit: stressOf(limit) };
  switch (name) {
    case 'seating':
      return notice('gasket-not-seated', params);
    case 'operating':
      return notice('gasket-unloads-in-service', params);
    case 'gasket crush':
      return notice('gasket-crushed', params);
    case 'flange rotation':
      return notice('flange-rotates-too-far', params);
  }
}
