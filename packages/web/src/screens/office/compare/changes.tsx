import { Link } from 'wouter';
import { useOffice } from '../../../language/office-speech.tsx';
import type { JointChange } from '../../../planning/view.ts';
import { Verdict } from '../plan/verdict.tsx';
import css from './compare.module.css';

/** Joint by joint, what was and what is. */
export function Changes({ changes }: { readonly changes: readonly JointChange[] }) {
  const say = useOffice();
  return (
    <ul className={css.changes}>
      {changes.map(({ tag, kind, before, after, lines }) => (
        <li key={tag} data-kind={kind}>
          <h3>
            {kind === 'gone' ? tag : <Link href={`/office/plan/${encodeURIComponent(tag)}`}>{tag}</Link>} <em>{say(`diff.is-${kind}`)}</em>
          </h3>
          <p>
            {before ? <Verdict verdict={before} /> : null}
            {before && after && before !== after ? ' → ' : ''}
            {after && before !== after ? <Verdict verdict={after} /> : null}
          </p>
          {lines.length > 0 ? (
            <table>
              <thead>
                <tr>
                  <th scope="col">{say('diff.what')}</th>
                  <th scope="col">{say('diff.before')}</th>
                  <th scope="col">{say('diff.after')}</th>
                </tr>
              </thead>
              <tbody>
                {lines.map((line) => (
                  <tr key={line.what}>
                    <th scope="row">{say(`diff.of-${line.what}`)}</th>
                    <td>{line.before}</td>
                    <td>{line.after}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
