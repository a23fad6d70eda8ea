import type { JointPlan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { inspectionFacts, workFacts } from '../told/around-facts.ts';
import { Facts, factsOf } from './facts.tsx';

/** What goes on around the turn: checks before it, time and energy, inspection after it. */
export function Around({ joint }: { readonly joint: JointPlan }) {
  const { work, inspection, checks } = joint;
  return (
    <>
      {checks.length > 0 && (
        <section>
          <h2>{label('checks.title')}</h2>
          <ul className="cautions">
            {checks.map(({ check }) => (
              <li key={check}>{label(`checks.${check}`)}</li>
            ))}
          </ul>
        </section>
      )}
      {work && (
        <section>
          <h2>{label('work.title')}</h2>
          <Facts facts={factsOf(workFacts(work))} />
          {work.assumed && <p className="minor">{label('work.assumed')}</p>}
        </section>
      )}
      {inspection && (
        <section>
          <h2>{label('inspection.title')}</h2>
          <Facts facts={factsOf(inspectionFacts(inspection))} />
          {!inspection.torqueProves && <p>{label('inspection.no-torque')}</p>}
        </section>
      )}
    </>
  );
}
