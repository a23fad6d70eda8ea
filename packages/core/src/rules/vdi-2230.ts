import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import type { Source } from '../source.ts';
import { assemblyPreload, type VdiEdition } from '../torque/assembly-preload.ts';
import { torqueForPreload } from '../torque/tightening-torque.ts';
import type { RuleSet } from './rule-set.ts';
import { snug, window, yieldCeiling } from './shared.ts';

/** Share of the yield strength that the guideline's tables use. */
const UTILISATION = 0.9;
/** Our window about the torque: common practice, no source. */
const WINDOW = 0.05;

/**
 * VDI 2230: preload at which tightening uses 90 % of the minimum yield strength, at the lowest friction credible for the lot,
 * torque by coefficients of friction. The edition matters: 1986 reads 5 to 9 % lower.
 */
export const vdi2230: RuleSet = {
  title: 'VDI 2230 Part 1, friction classes',
  editions: ['2015', '2003', '1986'],
  stepWord: 'step',
  sources: [{ standard: 'VDI 2230-1', provenance: 'published' }],
  tighten(bolt) {
    const clause: Source = { standard: 'VDI 2230-1', edition: bolt.edition, clause: 'Table A1, eq. R8/1, R13/1', provenance: 'published' };
    const { friction, strength } = bolt;
    if (friction === undefined) return refused(notice('friction-unknown', {}));
    if (friction.kind === 'nut factor') return refused(notice('coefficients-needed', {}));
    if (strength.yield === null) return refused(notice('no-proof-load', { grade: bolt.grade.id }));
    const table = assemblyPreload({
      size: bolt.thread,
      yieldStrength: strength.yield,
      threadFriction: friction.thread,
      utilisation: UTILISATION,
      edition: bolt.edition as VdiEdition,
    });
    const target = bolt.given.preload ?? table;
    return done({
      target: { value: target, source: bolt.given.preload === undefined ? clause : { standard: 'engineer', provenance: 'engineer' } },
      formula: 'F_M = 0.9 · R_p0.2 · A_0 / √(1 + 3·[k · d₂/d₀ · tan(φ+ρ′)]²);  M_A = F · (d₂/2 · tan(φ+ρ′) + μ_K · D_Km/2)',
      meaning: 'aim',
      steps: [
        snug(clause),
        {
          name: 'tighten',
          end: { kind: 'stall' },
          order: 'sequence',
          torque: window(torqueForPreload(friction, bolt.thread, target), WINDOW),
          aim: target,
          source: clause,
        },
      ],
      ceiling: yieldCeiling(bolt),
      aboveTarget: { allowed: false, source: clause },
      friction,
      cautions: ['as-delivered-lubricant'],
      notices: [],
    });
  },
};
