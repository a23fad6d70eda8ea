import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import { rcscSource } from '../rcsc/editions.ts';
import { editionOf, RCSC_RULE_EDITIONS, rcscTarget, rcscTightening } from './rcsc.ts';
import type { RuleSet } from './rule-set.ts';

const TWIST_OFF = ['F3125 F1852', 'F3125 F2280'];

/** RCSC twist-off-type assemblies: snug without shearing a spline, then until the spline is off. No setting. */
export const rcscTwistOff: RuleSet = {
  title: 'RCSC, twist-off-type bolts',
  editions: RCSC_RULE_EDITIONS,
  stepWord: 'step',
  sources: [rcscSource('2014', '8.2.3')],
  reach: 'nut',
  tighten(bolt) {
    const target = rcscTarget(bolt);
    const right = TWIST_OFF.includes(bolt.grade.id);
    if (!target.ok || !right) {
      const wrong = right ? [] : [notice('system-needed', { method: 'twist-off method', needed: 'F1852 or F2280' })];
      return refused(...wrong, ...(target.ok ? [] : target.notices));
    }
    return done(
      rcscTightening(
        bolt,
        target.value,
        [
          {
            name: 'tighten',
            end: { kind: 'spline off' },
            order: 'sequence',
            aim: target.value.value,
            source: rcscSource(editionOf(bolt), '8.2.3'),
          },
        ],
        { cautions: ['spline-only-after-snug'] },
      ),
    );
  },
};
