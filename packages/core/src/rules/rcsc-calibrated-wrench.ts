import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import { N, Nmm } from '../quantity.ts';
import { rcscSource } from '../rcsc/editions.ts';
import { VERIFICATION_FACTOR } from '../rcsc/verification-tension.ts';
import { byNutFactor } from '../torque/friction.ts';
import { torqueDoubts } from './plausible-torque.ts';
import { editionOf, RCSC_RULE_EDITIONS, rcscTarget, rcscTightening } from './rcsc.ts';
import type { RuleSet } from './rule-set.ts';

/** A setting may lie this far above the verified torque: own choice; below it is not allowed. */
const ABOVE = 0.1;

/**
 * RCSC calibrated wrench: the torque that gave 1.05·T_m in the pre-installation verification of this lot, on this day. A torque
 * from a table or formula does not count. Hardened washer under the part that turns.
 */
export const rcscCalibratedWrench: RuleSet = {
  title: 'RCSC, calibrated wrench method',
  editions: RCSC_RULE_EDITIONS,
  stepWord: 'step',
  sources: [rcscSource('2014', '8.2.2')],
  reach: 'nut',
  tighten(bolt) {
    const target = rcscTarget(bolt);
    const { verifiedTorque } = bolt;
    if (!target.ok || verifiedTorque === undefined) {
      return refused(...(target.ok ? [] : target.notices), ...(verifiedTorque === undefined ? [notice('tested-torque-needed', {})] : []));
    }
    const source = rcscSource(editionOf(bolt), '8.2.2');
    const reached = VERIFICATION_FACTOR * target.value.value;
    const doubts = torqueDoubts(verifiedTorque, N(reached), bolt.thread);
    if (doubts.length > 0) return refused(...doubts);
    const friction = byNutFactor(verifiedTorque / (reached * bolt.thread.diameter), {
      standard: 'pre-installation verification',
      provenance: 'certificate',
    });
    const torque = { wanted: verifiedTorque, low: verifiedTorque, high: Nmm((1 + ABOVE) * verifiedTorque) };
    return done(
      rcscTightening(
        bolt,
        target.value,
        [{ name: 'tighten', end: { kind: 'stall' }, order: 'sequence', torque, aim: target.value.value, source }],
        { cautions: ['never-above-method'], friction },
      ),
    );
  },
};
