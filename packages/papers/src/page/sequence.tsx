import type { JointPlan } from '@clampwright/core';
import { datumText, label, patternText } from '@clampwright/words';
import { jointDrawing } from '../drawing/index.ts';
import { SceneView } from './scene-view.tsx';

const PER_ROW = 10;

/** The drawing, the datum in words, and the two lists that must never be taken for each other, each under its own heading. */
export function Sequence({ joint }: { readonly joint: JointPlan }) {
  const { list, painted, pattern } = joint.sequence;
  const rows = Array.from({ length: Math.ceil(list.length / PER_ROW) }, (_, i) => ({
    from: i * PER_ROW,
    turns: list.slice(i * PER_ROW, (i + 1) * PER_ROW),
  }));
  return (
    <section className="sequence">
      <h2>{label('joint.sequence')}</h2>
      <p className="datum">{datumText(joint.datum)}</p>
      <div className="pair">
        <SceneView scene={jointDrawing(joint, 100, 100, 'under')} />
        {list.length === 0 && <p>{label('sequence.none')}</p>}
        {list.length > 0 && (
          <div className="lists">
            <h3>{label('sequence.list')}</h3>
            <p className="lead">
              {patternText(pattern)}.{list.some((bolts) => bolts.length > 1) && ` ${label('sequence.together')}`}
            </p>
            <ol className="turns">
              {rows.map(({ from, turns }) => (
                <li key={from}>
                  <span className="minor">{label('sequence.row', { from: from + 1, to: from + turns.length })}</span>
                  <span className="order">{turns.map((bolts) => bolts.join('+')).join('  ')}</span>
                </li>
              ))}
            </ol>
            <details>
              <summary>{label('sequence.painted')}</summary>
              <p className="lead">{label('sequence.painted-lead')}</p>
              <ul className="painted">
                {painted.map((turn, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the index is the bolt
                  <li key={at}>
                    <span>{label('sequence.bolt', { bolt: at + 1 })}</span> <b>{turn}</b>
                  </li>
                ))}
              </ul>
            </details>
          </div>
        )}
      </div>
    </section>
  );
}
