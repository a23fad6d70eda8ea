import { idOf, utf8 } from '@clampwright/record';
import { useState } from 'react';
import type { Book } from '../../../job/book.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { useWorld } from '../../../ui/world-context.ts';

/** Who types and checks certificates: people in the book of the yard; those of a job are taken over under the same id, and keep their PIN. */
export function YardPeople({ yard, jobs }: { readonly yard: Book; readonly jobs: readonly Book[] }) {
  const say = useOffice();
  const world = useWorld()!;
  const [name, setName] = useState('');
  const here = yard.fold.ids('person');
  const others = jobs.flatMap((book) =>
    book.fold
      .ids('person')
      .filter((id) => !here.includes(id) && !book.fold.state('person', id).revoked)
      .flatMap((id) => {
        const called = book.nameOf(id);
        return called === undefined ? [] : [{ id, called }];
      }),
  );
  const enrol = async (person: string, called: string) => {
    const hash = await world.device.attach(yard.job, utf8(called));
    await yard.record('person-enrolled', { person, name: hash, roles: ['store'] }, world.holder);
    await yard.refresh();
  };
  return (
    <Section title={say('store.people')}>
      <Soft>{say('store.people-text')}</Soft>
      <p>{here.map((id) => yard.nameOf(id) ?? id).join(', ')}</p>
      <Row>
        {others.map(({ id, called }) => (
          <Button key={id} onClick={() => void enrol(id, called)}>
            {say('store.take-person', { name: called })}
          </Button>
        ))}
      </Row>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void enrol(idOf('person', crypto.getRandomValues(new Uint8Array(16))), name.trim()).then(() => setName(''));
        }}
      >
        <Row>
          <Field label={say('store.person')}>
            <input value={name} onChange={(event) => setName(event.target.value)} autoComplete="off" />
          </Field>
          <Button type="submit" disabled={name.trim() === ''}>
            {say('store.enrol-person')}
          </Button>
        </Row>
      </form>
    </Section>
  );
}
