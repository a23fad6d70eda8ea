import { useState } from 'react';
import { useLocation } from 'wouter';
import { jointState } from '../job/joint-state.ts';
import { useSay, useTrade } from '../language/speech.tsx';
import css from '../ui/page.module.css';
import { Banner, Button, Field, Page, Section, Soft } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';

/** Shift handover: where every begun joint stands, where it may rest, who takes over. */
export function ShiftScreen() {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const [to, setTo] = useState('');
  const [text, setText] = useState('');
  const people = book.fold.ids('person').filter((id) => id !== world.holder && !book.fold.state('person', id).revoked);
  const begun = book.fold
    .ids('joint')
    .map((id) => jointState(book, id))
    .filter(({ joint, current }) => current && joint.history.length > 1);
  const give = async () => {
    await book.record('shift-handed-over', { to, ...(text.trim() === '' ? {} : { text: text.trim() }) }, world.holder);
    world.setHolder(undefined);
    go('/');
  };
  return (
    <Page title={say('shift.title')} back="/">
      {world.holder === undefined ? <Banner level="mind">{say('who.needed')}</Banner> : null}
      <Section title={say('joint.history')}>
        {begun.length === 0 ? <Soft>{say('today.none-open')}</Soft> : null}
        <ul className={css.list}>
          {begun.map(({ joint, card, current }) => (
            <li key={joint.joint} className={css.item}>
              <span>
                {say('shift.state', { tag: joint.tag ?? '', step: trade.step(current!.step), left: current!.left })}
                {card?.work ? <small>{say('shift.rest', { where: trade.rest(card.work.safeStop) })}</small> : null}
              </span>
            </li>
          ))}
        </ul>
      </Section>
      <Field label={say('shift.to')}>
        <select value={to} onChange={(event) => setTo(event.target.value)}>
          <option value="" />
          {people.map((id) => (
            <option key={id} value={id}>
              {book.nameOf(id) ?? id}
            </option>
          ))}
        </select>
      </Field>
      <Field label={say('shift.text')}>
        <textarea rows={3} value={text} onChange={(event) => setText(event.target.value)} />
      </Field>
      <Button kind="act" disabled={to === '' || world.holder === undefined} onClick={() => void give()}>
        {say('shift.give', { name: to === '' ? '…' : (book.nameOf(to) ?? to) })}
      </Button>
    </Page>
  );
}
