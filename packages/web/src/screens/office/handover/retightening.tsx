import { type CivilDate, type Due, duties, YEARLY_SAMPLE } from '@clampwright/core';
import { finishedJoints } from '@clampwright/record';
import type { Book } from '../../../job/book.ts';
import { today } from '../../../job/today.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Button, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import own from './handover.module.css';

/** When joints are looked at again: from the days on which crews signed them, and from what was set in the record. */
export function Retightening({ book }: { readonly book: Book }) {
  const say = useOffice();
  const { figure, source } = useTrade();
  const now = today();
  const due = dueJoints(book, now);
  const download = async () => {
    const { dueCalendar, dutyDays } = await import('@clampwright/papers/out');
    const title = book.fold.state('book', 'book').title ?? '';
    save('retightening.ics', dueCalendar(title, dutyDays(due), new Date()));
  };
  return (
    <Section title={say('over.retightening')}>
      <Soft>
        {say('over.retightening-text', {
          months: YEARLY_SAMPLE.everyMonths,
          share: `${figure(100 * YEARLY_SAMPLE.share, 0)} %`,
          source: source(YEARLY_SAMPLE.source),
        })}
      </Soft>
      {due.length === 0 ? <Soft>{say('over.retightening-none')}</Soft> : null}
      <ul>
        {due.map(({ tag, due: on, bolts, overdue }) => (
          <li key={`${tag} ${on}`} className={overdue ? `${own.day} ${own.late}` : own.day}>
            <time dateTime={on}>{on}</time> <strong>{tag}</strong> <span>{say('list.bolts', { bolts })}</span>
          </li>
        ))}
      </ul>
      {due.length > 0 ? <Button onClick={() => void download()}>{say('store.due-file')}</Button> : null}
    </Section>
  );
}

/** A day that was set for a joint stands before the custom of a year. */
function dueJoints(book: Book, now: CivilDate): Due[] {
  const byRule = duties(finishedJoints(book.fold), YEARLY_SAMPLE, now);
  const set = new Map<string, CivilDate>();
  for (const id of book.fold.ids('joint')) {
    const { tag = id, retightening } = book.fold.state('joint', id);
    const last = retightening.at(-1);
    if (last?.due !== undefined && !last.done) set.set(tag, last.due as CivilDate);
  }
  return byRule
    .map((one) => {
      const day = set.get(one.tag);
      return day === undefined ? one : { ...one, due: day, overdue: day < now };
    })
    .sort((a, b) => a.due.localeCompare(b.due));
}
