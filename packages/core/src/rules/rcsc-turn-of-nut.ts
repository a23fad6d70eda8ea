import { notice } from '../notice/index.ts';
import { done, refused } from '../outcome.ts';
import { rcscSource } from '../rcsc/editions.ts';
import { nutRotation, rotationTolerance } from '../rcsc/turn-of-nut.ts';
import { editionOf, RCSC_RULE_EDITIONS, rcscTarget, rcscTightening } from './rcsc.ts';
import type { RuleSet } from './rule-set.ts';

/** RCSC turn-of-nut: snug all, match-mark, then turn by an angle that depends on length and sloped faces. No setting. */
export const rcscTurnOfNut: RuleSet = {
  title: 'RCSC, turn-of-nut method',
  editions: RCSC_RULE_EDITIONS,
  stepWord: 'step',
  sources: [rcscSource('2014', '8.2.1')],
  reach: 'nut',
  tighten(bolt) {
    const target = rcscTarget(bolt);
    const edition = editionOf(bolt);
    const turn =
      bolt.length === undefined
        ? refused(notice('bolt-length-needed', {}))
        : nutRotation(bolt.thread.diameter, bolt.length, bolt.slopedFaces, edition);
    if (!target.ok || !turn.ok) return refused(...(target.ok ? [] : target.notices), ...(turn.ok ? [] : turn.notices));
    const end = { kind: 'mark at angle', angle: turn.value.value, ...rotationTolerance(turn.value.value, edition) } as const;
    return done(
      rcscTightening(
        bolt,
        target.value,
        [{ name: 'tighten', end, order: 'sequence', aim: target.value.value, source: turn.value.source }],
        {
          cautions: ['mark-before-turning'],
        },
      ),
    );
  },
};
