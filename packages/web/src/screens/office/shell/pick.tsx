import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Button, Field, Row } from '../../../ui/page.tsx';

interface PickProps {
  readonly label: string;
  /** what may be picked, and how each is read */
  readonly choices: readonly (readonly [string, string])[];
  /** what holds now */
  readonly value?: string;
  /** the word on the button */
  readonly does: string;
  readonly onPicked: (value: string) => void;
}

/** One of several, taken by a button: whoever goes through the list by arrows has changed nothing yet. */
export function Pick({ label, choices, value = '', does, onPicked }: PickProps) {
  const say = useOffice();
  const [picked, setPicked] = useState(value);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onPicked(picked);
        setPicked(value);
      }}
    >
      <Row>
        <Field label={label}>
          <select value={picked} onChange={(event) => setPicked(event.target.value)}>
            {value === '' ? <option value="">{say('list.choose')}</option> : null}
            {choices.map(([one, text]) => (
              <option key={one} value={one}>
                {text}
              </option>
            ))}
          </select>
        </Field>
        <Button type="submit" disabled={picked === value}>
          {does}
        </Button>
      </Row>
    </form>
  );
}
