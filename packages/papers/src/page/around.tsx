import type { JointPlan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { Facts } from './facts.tsx';

const kilojoule = (joule: number) => (joule / 1000).toFixed(joule < 10_000 ? 1 : 0);

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
          <Facts
            facts={[
              [label('work.pulls'), work.pulls],
              [label('work.minutes'), label('work.minutes-value', { minutes: Math.round(work.minutes) })],
              [label('work.energy'), label('work.energy-value', { energy: kilojoule(work.energy) })],
              work.draw !== undefined && [label('work.draw'), label('work.draw-value', { energy: kilojoule(work.draw) })],
              [label('work.ends'), label(`work.ends.${work.ends}`)],
              [label('work.safe-stop'), label(`work.safe-stop.${work.safeStop}`)],
            ]}
          />
          {work.assumed && <p className="minor">{label('work.assumed')}</p>}
        </section>
      )}
      {inspection && (
        <section>
          <h2>{label('inspection.title')}</h2>
          <Facts
            facts={[
              [label('inspection.method'), label(`inspection.method.${inspection.method}`)],
              inspection.window && [label('inspection.window'), windowText(inspection.window)],
              inspection.sample !== undefined && [label('inspection.sample'), inspection.sample],
            ]}
          />
          {!inspection.torqueProves && <p>{label('inspection.no-torque')}</p>}
        </section>
      )}
    </>
  );
}

const windowText = ({ from, until }: { readonly from: number; readonly until?: number }) =>
  until === undefined ? label('inspection.window-from', { from }) : label('inspection.window-both', { from, until });
