import { Link } from 'wouter';
import { jointState } from '../../../job/joint-state.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import css from '../../../ui/page.module.css';
import { Section } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';

/** Every joint and how far it has come, as crews send it. */
export function Board() {
  const say = useOffice();
  const trade = useTrade();
  const { book } = useJob();
  const states = book.fold
    .ids('joint')
    .map((id) => jointState(book, id))
    .filter(({ joint }) => joint.plan);
  if (states.length === 0) return null;
  return (
    <Section title={say('office.board')}>
      <ul className={css.list}>
        {states.map(({ joint, current, steps, where }) => {
          const all = steps.length * joint.plan!.slice.bolts;
          const left = steps.reduce((sum, one) => sum + one.left, 0);
          return (
            <li key={joint.joint}>
              <Link href={`/joint/${joint.joint}`} className={css.item}>
                <strong>{joint.tag}</strong>
                <progress value={all - left} max={Math.max(1, all)} aria-label={joint.tag} />
                <span>
                  {current
                    ? say('shift.state', { tag: joint.tag ?? '', step: trade.step(current.step), left: current.left })
                    : say(`today.${where}`)}
                </span>
              </Link>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
