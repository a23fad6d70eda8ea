import { isPin } from '@clampwright/sync';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useSay } from '../language/speech.tsx';
import { Banner, Button, Field, Page, Section, Soft } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';

/** Names who holds the device, by PIN. It says who held it, and no more. */
export function WhoScreen() {
  const say = useSay();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const [chosen, setChosen] = useState<string>();
  const people = book.fold
    .ids('person')
    .map((id) => book.fold.state('person', id))
    .filter(({ revoked }) => !revoked);
  const name = (person: string) => book.nameOf(person) ?? person;
  return (
    <Page title={say('who.title')} back="/">
      {people.length === 0 ? <Soft>{say('who.none')}</Soft> : null}
      {people.map(({ person }) => (
        <Button key={person} kind={person === chosen ? 'act' : 'plain'} aria-pressed={person === chosen} onClick={() => setChosen(person)}>
          {name(person)}
        </Button>
      ))}
      {chosen === undefined ? null : (
        <Pin
          key={chosen}
          person={chosen}
          name={name(chosen)}
          onNamed={() => {
            world.setHolder(chosen);
            go('/');
          }}
        />
      )}
    </Page>
  );
}

function Pin({ person, name, onNamed }: { readonly person: string; readonly name: string; readonly onNamed: () => void }) {
  const say = useSay();
  const { world } = useJob();
  const [pin, setPin] = useState('');
  const [wrong, setWrong] = useState<'wrong' | 'none'>();
  const check = async () => {
    const known = (await world.pins()).find((one) => one.person === person);
    if (!known) setWrong('none');
    else if (await isPin(pin, known)) onNamed();
    else setWrong('wrong');
  };
  return (
    <Section title={say('who.pin', { name })}>
      <form
        style={{ display: 'grid', gap: '0.8rem' }}
        onSubmit={(event) => {
          event.preventDefault();
          void check();
        }}
      >
        <Field label={say('who.pin', { name })}>
          <input
            inputMode="numeric"
            type="password"
            autoComplete="off"
            pattern="\d{4,12}"
            value={pin}
            onChange={(event) => setPin(event.target.value)}
          />
        </Field>
        {wrong === undefined ? null : (
          <Banner level="stop">{wrong === 'wrong' ? say('who.pin-wrong') : say('who.no-pin', { name })}</Banner>
        )}
        <Button kind="act" type="submit" disabled={pin.length < 4}>
          {say('app.confirm')}
        </Button>
      </form>
    </Section>
  );
}
