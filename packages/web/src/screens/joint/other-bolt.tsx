import { useState } from 'react';
import { useSay } from '../../language/speech.tsx';
import { Button, Field, Section } from '../../ui/page.tsx';

interface OtherBoltProps {
  readonly open: readonly number[];
  readonly next: number;
  readonly onChosen: (bolt: number, why: string) => void;
}

/** Another bolt than the next one: possible, with a reason. */
export function OtherBolt({ open, next, onChosen }: OtherBoltProps) {
  const say = useSay();
  const [asked, setAsked] = useState(false);
  const [bolt, setBolt] = useState('');
  const [why, setWhy] = useState('');
  if (!asked)
    return (
      <Button kind="quiet" onClick={() => setAsked(true)}>
        {say('tighten.other-bolt')}
      </Button>
    );
  return (
    <Section title={say('tighten.other-bolt')}>
      <Field label={say('tighten.other-bolt')}>
        <select value={bolt} onChange={(event) => setBolt(event.target.value)}>
          <option value="" />
          {open
            .filter((one) => one !== next)
            .map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
        </select>
      </Field>
      <Field label={say('tighten.other-why')}>
        <input value={why} onChange={(event) => setWhy(event.target.value)} />
      </Field>
      <Button
        disabled={bolt === '' || why.trim() === ''}
        onClick={() => {
          onChosen(Number(bolt), why);
          setAsked(false);
        }}
      >
        {say('app.confirm')}
      </Button>
    </Section>
  );
}
