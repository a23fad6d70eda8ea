import type { TighteningPlan } from '@clampwright/core';
import { citedSource, label, sourceText, type UnitSystem } from '@clampwright/words';
import { Facts } from './facts.tsx';
import { spoken } from './spoken.ts';

/** The preload of one subgroup: what it must be, what it will be, where the figures come from. */
export function Preload({ tightening, units }: { readonly tightening: TighteningPlan; readonly units: UnitSystem }) {
  const say = spoken(units);
  const { target, meaning, formula, friction, controlTorque, ceiling, utilisation, aboveTarget, steps } = tightening;
  const byAngle = steps.some(({ end }) => end.kind === 'mark at angle');
  const last = byAngle ? undefined : steps.findLast(({ setting }) => setting)?.setting;
  const from = (source: string) => <span className="minor">{source}</span>;
  return (
    <Facts
      facts={[
        [
          label('preload.target'),
          <>
            <strong className="figure">{say.force(target.value)}</strong> {label(`preload.${meaning}`)}
            {from(citedSource(target))}
          </>,
        ],
        last && [
          label('preload.interval'),
          label('preload.range', { low: say.force(last.preloadLow), high: say.force(last.preloadHigh), mean: say.force(last.preload) }),
        ],
        ceiling && [
          label('preload.ceiling'),
          <>
            {say.force(ceiling.value)}
            {from(citedSource(ceiling))}
          </>,
        ],
        utilisation && [
          label('preload.utilisation'),
          utilisation.estimate ? label('preload.estimate', { share: say.share(utilisation.value) }) : say.share(utilisation.value),
        ],
        [
          label('preload.formula'),
          <span key="formula" className="formula">
            {formula}
          </span>,
        ],
        friction && [
          label('preload.friction'),
          <>
            {friction.text}
            {from(sourceText(friction.source))}
          </>,
        ],
        controlTorque && [
          label('preload.control'),
          <>
            {label('preload.control-text', { torque: say.torque(controlTorque.value) })}
            {from(citedSource(controlTorque))}
          </>,
        ],
        [
          label('preload.above'),
          <>
            {label(aboveTarget.allowed === false ? 'preload.above-no' : 'preload.above-engineer')}
            {from(sourceText(aboveTarget.source))}
          </>,
        ],
      ]}
    />
  );
}
