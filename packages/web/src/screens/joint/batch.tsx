import { useState } from 'react';
import { useSay } from '../../language/speech.tsx';
import { Button, Field, Row, Section, Soft } from '../../ui/page.tsx';

interface BatchProps {
  readonly lines: readonly (readonly number[])[];
  /** has the bolt the same setting as the next one? */
  readonly same: (bolt: number) => boolean;
  readonly onDone: (bolts: readonly number[]) => void;
}

/** Several bolts told at once, honestly: from the next one on, as far as the setting is the same. */
export function Batch({ lines, same, onDone }: BatchProps) {
  const say = useSay();
  const order = lines.flat();
  const end = order.findIndex((bolt) => !same(bolt));
  const possible = end < 0 ? order : order.slice(0, end);
  const [last, setLast] = useState(possible.at(-1) ?? 0);
  const bolts = possible.slice(0, possible.indexOf(last) + 1);
  return (
    <Section title={say('tighten.batch')}>
      <Soft>{say('tighten.batch-text')}</Soft>
      <Row>
        <p>
          {say('tighten.batch-from')} <strong>{possible[0]}</strong>
        </p>
        <Field label={say('tighten.batch-to')}>
          <select value={last} onChange={(event) => setLast(Number(event.target.value))}>
            {possible.map((bolt) => (
              <option key={bolt} value={bolt}>
                {bolt}
              </option>
            ))}
          </select>
        </Field>
      </Row>
      <Button onClick={() => onDone(bolts)}>{say('tighten.batch-done', { bolts: bolts.join(', ') })}</Button>
    </Section>
  );
}
