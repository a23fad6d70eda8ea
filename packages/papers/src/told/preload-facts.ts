import type { TighteningPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';
import { spoken } from '../page/spoken.ts';
import { known, type ToldFact } from './fact.ts';

/** The preload of one subgroup: what it must be, what it will be, where the figures come from. */
export function preloadFacts(tightening: TighteningPlan, units: UnitSystem, words: Words = ENGLISH_WORDS): ToldFact[] {
  const say = spoken(units, words);
  const { label, cited: citedSource, source: sourceText } = words;
  const { target, meaning, formula, friction, controlTorque, ceiling, utilisation, aboveTarget, steps } = tightening;
  const byAngle = steps.some(({ end }) => end.kind === 'mark at angle');
  const last = byAngle ? undefined : steps.findLast(({ setting }) => setting)?.setting;
  return known([
    { name: label('preload.target'), leading: say.force(target.value), text: label(`preload.${meaning}`), source: citedSource(target) },
    last && {
      name: label('preload.interval'),
      text: label('preload.range', { low: say.force(last.preloadLow), high: say.force(last.preloadHigh), mean: say.force(last.preload) }),
    },
    ceiling && { name: label('preload.ceiling'), text: say.force(ceiling.value), source: citedSource(ceiling) },
    utilisation && {
      name: label('preload.utilisation'),
      text: utilisation.estimate ? label('preload.estimate', { share: say.share(utilisation.value) }) : say.share(utilisation.value),
    },
    { name: label('preload.formula'), text: formula },
    friction && { name: label('preload.friction'), text: friction.text, source: sourceText(friction.source) },
    controlTorque && {
      name: label('preload.control'),
      text: label('preload.control-text', { torque: say.torque(controlTorque.value) }),
      source: citedSource(controlTorque),
    },
    {
      name: label('preload.above'),
      text: label(aboveTarget.allowed === false ? 'preload.above-no' : 'preload.above-engineer'),
      source: sourceText(aboveTarget.source),
    },
  ]);
}
