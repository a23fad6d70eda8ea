import { isPin } from '@clampwright/sync';
import { useState } from 'react';
import type { Book } from '../../../job/book.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Field, Row } from '../../../ui/page.tsx';
import { useWorld } from '../../../ui/world-context.ts';
import { Pick } from '../shell/pick.tsx';

interface NamedProps {
  readonly yard: Book;
  readonly label: string;
  /** who cannot be it: one does not check oneself */
  readonly not?: string | undefined;
  readonly value: string | undefined;
  readonly onNamed: (person: string | undefined) => void;
}

/** A person of the yard, named by PIN where one is set. It says who held the device, and no more. */
export function NamedPerson({ yard, label, not, value, onNamed }: NamedProps) {
  const say = useOffice();
  const world = useWorld();
  const [chosen, setChosen] = useState('');
  const [pin, setPin] = useState('');
  const [asks, setAsks] = useState<'pin' | 'wrong'>();
  const people = yard.fold.ids('person').filter((id) => id !== not && !yard.fold.state('person', id).revoked);
  const name = (person: string) => yard.nameOf(person) ?? person;
  const check = async (person: string, typed: string) => {
    const known = (await world!.pins()).find((one) => one.person === person);
    if (!known) return onNamed(person);
    if (typed === '') return setAsks('pin');
    if (!(await isPin(typed, known))) return setAsks('wrong');
    setAsks(undefined);
    return onNamed(person);
  };
  if (value !== undefined)
    return (
      <Row>
        <p>
          {label}: <strong>{name(value)}</strong>
        </p>
        <Button kind="quiet" onClick={() => onNamed(undefined)}>
          {say('store.other-person')}
        </Button>
      </Row>
    );
  return (
    <>
      <Row>
        <Pick
          label={label}
          choices={people.map((person) => [person, name(person)])}
          does={say('pick.person')}
          onPicked={(person) => {
            setChosen(person);
            setPin('');
            setAsks(undefined);
            void check(person, '');
          }}
        />
        {asks === undefined ? null : (
          <form
            onSubmit={(event) => {
              event.preventDefault();
              void check(chosen, pin);
            }}
          >
            <Row>
              <Field label={say('store.pin-of', { name: name(chosen) })}>
                <input
                  type="password"
                  inputMode="numeric"
                  autoComplete="off"
                  value={pin}
                  onChange={(event) => setPin(event.target.value)}
                />
              </Field>
              <Button type="submit" disabled={pin.length < 4}>
                {say('pick.person')}
              </Button>
            </Row>
          </form>
        )}
      </Row>
      {asks === 'wrong' ? <Banner level="stop">{say('who.pin-wrong')}</Banner> : null}
    </>
  );
}
