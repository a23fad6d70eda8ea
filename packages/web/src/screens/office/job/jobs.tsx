import type { Answered } from '@clampwright/sync';
import { useCallback, useEffect, useState } from 'react';
import { openDatabase } from '../../../device/database.ts';
import { enrol } from '../../../device/enrol.ts';
import type { Book } from '../../../job/book.ts';
import { useWatched, watched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import css from '../../../ui/page.module.css';
import { Button, Field, Row, Section } from '../../../ui/page.tsx';
import { useWorld } from '../../../ui/world-context.ts';
import { FaultLine } from './fault-line.tsx';
import { type Fault, faultOf, server } from './session.ts';

const NONE = watched<readonly Book[]>([]);

/** Every job of the yard; each may be taken onto this browser, which then records for it like any device. */
export function Jobs({ onEnrolled }: { readonly onEnrolled: () => void }) {
  const say = useOffice();
  const world = useWorld();
  const here = useWatched(world?.books ?? NONE);
  const [books, setBooks] = useState<Answered<'books'>['books']>([]);
  const [title, setTitle] = useState('');
  const [fault, setFault] = useState<Fault>();
  const ask = useCallback(async () => {
    const answer = await server('books', {});
    setFault(faultOf(answer));
    if (answer.kind === 'answered') setBooks(answer.value.books.filter(({ job }) => job.startsWith('j-')));
  }, []);
  useEffect(() => void ask(), [ask]);
  const add = async () => {
    const answer = await server('addBook', { body: { title: title.trim() } });
    setFault(faultOf(answer));
    setTitle('');
    await ask();
  };
  const take = async (job: string) => {
    const jobs = [...here.map((one) => one.job), job];
    if (world) setFault(faultOf(await server('setDeviceBooks', { params: { device: world.device.id }, body: { books: jobs } })));
    else {
      const opened = await server('openEnrolment', { body: { name: say('office.title'), books: jobs } });
      if (opened.kind !== 'answered') return setFault(faultOf(opened));
      const enrolled = await enrol(await openDatabase('work'), opened.value.code);
      if (!enrolled.ok) return setFault(enrolled.notices);
    }
    onEnrolled();
    return undefined;
  };
  return (
    <Section title={say('office.jobs')}>
      <ul className={css.list}>
        {books.map(({ job, title: name }) => (
          <li key={job} className={css.item}>
            <strong>{name}</strong>
            {here.some((one) => one.job === job) ? (
              <Button
                kind={world?.job === job || (world?.job === undefined && here[0]?.job === job) ? 'act' : 'plain'}
                onClick={() => world?.setJob(job)}
              >
                {say('office.work-on')}
              </Button>
            ) : (
              <Button onClick={() => void take(job)}>{say('office.take-job')}</Button>
            )}
          </li>
        ))}
      </ul>
      <FaultLine fault={fault} />
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <Row>
          <Field label={say('office.new-job')}>
            <input value={title} onChange={(event) => setTitle(event.target.value)} />
          </Field>
          <Button type="submit" disabled={title.trim() === ''}>
            {say('office.open-job')}
          </Button>
        </Row>
      </form>
    </Section>
  );
}
