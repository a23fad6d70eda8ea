import { done, refused } from '../outcome.ts';
import { DTI_FEELER, directTensionIndicator } from '../rcsc/dti.ts';
import { rcscSource } from '../rcsc/editions.ts';
import { structuralGrade } from '../rcsc/structural-grade.ts';
import { editionOf, RCSC_RULE_EDITIONS, rcscTarget, rcscTightening } from './rcsc.ts';
import type { RuleSet } from './rule-set.ts';

/** RCSC direct tension indicators (ASTM F959): until half or more of the spaces refuse a 0.005 in feeler. No setting. */
export const rcscDti: RuleSet = {
  title: 'RCSC, direct tension indicators',
  editions: RCSC_RULE_EDITIONS,
  stepWord: 'step',
  sources: [rcscSource('2014', '8.2.4')],
  reach: 'nut',
  tighten(bolt) {
    const target = rcscTarget(bolt);
    const grade = structuralGrade(bolt.grade.id);
    const indicator = directTensionIndicator(grade.ok && grade.value.group.startsWith('150') ? '490' : '325', bolt.thread.diameter);
    if (!target.ok || !indicator.ok) return refused(...(target.ok ? [] : target.notices), ...(indicator.ok ? [] : indicator.notices));
    return done(
      rcscTightening(
        bolt,
        target.value,
        [
          {
            name: 'tighten',
            end: { kind: 'feeler refused', thickness: DTI_FEELER },
            order: 'sequence',
            aim: target.value.value,
            source: rcscSource(editionOf(bolt), '8.2.4'),
          },
        ],
        { cautions: [] },
      ),
    );
  },
};
