import { idOf, ROLES, utf8 } from '@clampwright/record';
import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import css from '../../../ui/page.module.css';
import { Banner, Button, Field, Row, Section } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';
import { FaultLine } from './fault-line.tsx';
import { type Fault, faultOf, server } from './session.ts';

const CHOICES = ROLES.filter((role) => role === 'planner' || role === 'crew' || role === 'inspector');

/** Who takes part in the job, in which role, and the PIN by which devices name them. The planner says which of them sits here. */
export function People() {
  const say = useOffice();
  const { world, book } = useJob();
  const [name, setName] = useState('');
  const [role, setRole] = useState<(typeof CHOICES)[number]>('crew');
  const people = book.fold.ids('person').map((id) => book.fold.state('person', id));
  const wanted = name.trim();
  const namesake = people
    .filter(({ revoked }) => !revoked)
    .map(({ person }) => book.nameOf(person) ?? '')
    .find((one) => one.toLowerCase() === wanted.toLowerCase());
  const enrol = async () => {
    const person = idOf('person', crypto.getRandomValues(new Uint8Array(16)));
    const hash = await world.device.attach(book.job, utf8(wanted));
    await book.record('person-enrolled', { person, name: hash, roles: [role] }, world.holder);
    await book.refresh();
    if (role === 'planner' && world.holder === undefined) world.setHolder(person);
    setName('');
  };
  return (
    <Section title={say('office.people')}>
      <ul className={css.list}>
        {people.map(({ person, roles, revoked }) => (
          <li key={person} className={css.section}>
            <p>
              <strong>{book.nameOf(person) ?? person}</strong> ·{' '}
              {roles
                .map((one) => (one === 'planner' || one === 'crew' || one === 'inspector' ? say(`office.role-${one}`) : one))
                .join(', ')}
              {revoked ? ` · ${say('office.revoked')}` : ''}
            </p>
            <Row>
              <Pin person={person} name={book.nameOf(person) ?? person} />
              {roles.includes('planner') ? (
                <Button
                  kind={world.holder === person ? 'act' : 'plain'}
                  aria-pressed={world.holder === person}
                  onClick={() => world.setHolder(person)}
                >
                  {say('office.i-am')} {book.nameOf(person)}
                </Button>
              ) : null}
            </Row>
          </li>
        ))}
      </ul>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void enrol();
        }}
      >
        <Row>
          <Field label={say('office.person')}>
            <input value={name} onChange={(event) => setName(event.target.value)} autoComplete="off" />
          </Field>
          <Field label={say('office.role')}>
            <select value={role} onChange={(event) => setRole(event.target.value as typeof role)}>
              {CHOICES.map((one) => (
                <option key={one} value={one}>
                  {say(`office.role-${one}`)}
                </option>
              ))}
            </select>
          </Field>
          <Button type="submit" disabled={wanted === '' || namesake !== undefined}>
            {say('office.enrol-person')}
          </Button>
        </Row>
        {namesake === undefined ? null : <p role="status">{say('office.namesake', { name: namesake })}</p>}
      </form>
    </Section>
  );
}

function Pin({ person, name }: { readonly person: string; readonly name: string }) {
  const say = useOffice();
  const [pin, setPin] = useState('');
  const [fault, setFault] = useState<Fault>();
  const [set, setSet] = useState(false);
  const save = async () => {
    const answer = await server('setPin', { params: { person }, body: { pin } });
    setFault(faultOf(answer));
    setSet(answer.kind === 'answered');
    setPin('');
  };
  return (
    <form
      style={{ display: 'grid', gap: '0.5rem' }}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <Field label={say('office.pin')}>
        <input value={pin} onChange={(event) => setPin(event.target.value)} inputMode="numeric" pattern="\d{4,12}" autoComplete="off" />
      </Field>
      <FaultLine fault={fault} />
      {set ? <Banner level="fine">{say('office.pin-set', { name })}</Banner> : null}
      <Button type="submit" disabled={!/^\d{4,12}$/.test(pin)}>
        {say('office.set-pin', { name })}
      </Button>
    </form>
  );
}
