import { nominalRootArea } from '../fasteners/thread.ts';
import { passScheduleSource, roundTorque } from '../flanges/pass-schedule.ts';
import { type Notice, notice } from '../notice/index.ts';
import { percent, stress } from '../notice/measure.ts';
import { done, refused } from '../outcome.ts';
import { MPa, N, Nmm } from '../quantity.ts';
import { torqueForPreload } from '../torque/tightening-torque.ts';
import type { RuleSet, Step } from './rule-set.ts';
import { snug, window, yieldCeiling } from './shared.ts';

const clause = passScheduleSource;
/** Usual upper limit of the assembly bolt stress, share of the bolt's ambient yield strength. ASME PCC-1:2013 Appendix O. */
const USUAL_LIMIT = 0.7;
/** Our window about the final torque: common practice, no source. */
const FINAL_WINDOW = 0.05;

/**
 * Pressure flange by assembly bolt stress: F = S_bsel·A_r, T = K·D·F or by friction coefficients. Rounds at 20–30 %, 50–70 % and
 * 100 % across the flange, then round the circle at 100 % until no nut moves, and the same again after at least four hours.
 * The stress is the engineer's: it comes from gasket, flange and bolt together, and none is invented here.
 */
export const flangeBoltStress: RuleSet = {
  title: 'Pressure flange, assembly bolt stress',
  editions: ['2013', '2022'],
  stepWord: 'pass',
  sources: [clause],
  reach: 'nut',
  tighten(bolt) {
    const { boltStress, preload } = bolt.given;
    const missing: Notice[] = [];
    if (boltStress === undefined && preload === undefined) missing.push(notice('bolt-stress-needed', {}));
    if (bolt.friction === undefined) missing.push(notice('friction-unknown', {}));
    if (missing.length > 0 || bolt.friction === undefined) return refused(...missing);
    const area = nominalRootArea(bolt.thread);
    const target = preload ?? N(boltStress! * area);
    const onRoot = MPa(target / area);
    const { yield: yieldStrength } = bolt.strength;
    if (yieldStrength !== null && onRoot >= yieldStrength) {
      return refused(notice('bolt-stress-above-yield', { stress: stress(onRoot), yield: stress(yieldStrength) }));
    }
    const notices: Notice[] = [];
    if (yieldStrength !== null && onRoot > USUAL_LIMIT * yieldStrength + 1e-9) {
      notices.push(notice('bolt-stress-high', { share: percent(onRoot / yieldStrength), usual: percent(USUAL_LIMIT) }));
    }
    const full = torqueForPreload(bolt.friction, bolt.thread, target);
    const final = { torque: window(full, FINAL_WINDOW), aim: target, source: clause } as const;
    const round = (number: 1 | 2): Step => {
      const { low, high } = roundTorque(number, full);
      const torque = { wanted: Nmm((low + high) / 2), low, high };
      return { name: `round ${number}`, end: { kind: 'stall' }, order: 'sequence', torque, source: clause };
    };
    return done({
      target: { value: target, source: { standard: 'engineer', clause: 'assembly bolt stress', provenance: 'engineer' } },
      formula:
        bolt.friction.kind === 'nut factor'
          ? 'F = S_bsel · A_r;  T = K · D · F'
          : 'F = S_bsel · A_r;  T = F · (d₂/2 · tan(φ+ρ′) + μ_K · D_Km/2)',
      meaning: 'aim',
      steps: [
        snug(clause),
        round(1),
        round(2),
        { name: 'round 3', end: { kind: 'stall' }, order: 'sequence', ...final },
        { name: 'circular round', end: { kind: 'no nut moves' }, order: 'circular', ...final },
        { name: 're-check', end: { kind: 'no nut moves' }, order: 'circular', ...final },
      ],
      ceiling: yieldCeiling(bolt),
      aboveTarget: { allowed: 'with the engineer’s figure for this joint', source: clause },
      friction: bolt.friction,
      cautions: ['pressure-isolated', 'gap-after-each-pass', 'recheck-after-four-hours'],
      notices,
    });
  },
};
