import type { Nonconformance } from '@clampwright/record';
import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Banner, Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';

const DISPOSITIONS = ['use as is', 'rework', 'replace'] as const;

/** What contradicts itself or was reported, to be settled by a named person. */
export function Settle() {
  const say = useOffice();
  const { book } = useJob();
  const all = book.fold.nonconformances().filter(({ state }) => state !== 'settled');
  return (
    <Section title={say('office.settle')}>
      {all.length === 0 ? <Soft>{say('office.settle-none')}</Soft> : null}
      {all.slice(0, 50).map((one) => (
        <One key={one.id} one={one} />
      ))}
    </Section>
  );
}

function One({ one }: { readonly one: Nonconformance }) {
  const say = useOffice();
  const { says } = useNotice();
  const { world, book } = useJob();
  const [disposition, setDisposition] = useState<(typeof DISPOSITIONS)[number]>('use as is');
  const [authority, setAuthority] = useState('');
  const [reason, setReason] = useState('');
  const tag = one.joint === undefined ? '' : `${book.fold.state('joint', one.joint).tag ?? one.joint}: `;
  const name = world.holder === undefined ? say('who.nobody') : (book.nameOf(world.holder) ?? world.holder);
  return (
    <Banner level="mind">
      <p>
        {tag}
        {one.notice ? says(one.notice) : one.text} ({say(`office.state-${one.state}`)})
      </p>
      {one.state === 'to be inspected again' ? (
        <Row>
          <p>{say('office.settle-again')}</p>
          {([true, false] as const).map((passed) => (
            <Button
              key={String(passed)}
              disabled={world.holder === undefined}
              onClick={() => void book.record('nonconformance-reinspected', { nonconformance: one.id, passed }, world.holder)}
            >
              {say(passed ? 'inspect.passed' : 'inspect.failed')}
            </Button>
          ))}
        </Row>
      ) : (
        <Row>
          <Field label={say('office.settle-as')}>
            <select value={disposition} onChange={(event) => setDisposition(event.target.value as typeof disposition)}>
              {DISPOSITIONS.map((each) => (
                <option key={each} value={each}>
                  {say(`office.settle-${each}`)}
                </option>
              ))}
            </select>
          </Field>
          <Field label={say('office.settle-authority')}>
            <input value={authority} onChange={(event) => setAuthority(event.target.value)} />
          </Field>
          <Field label={say('office.settle-reason')}>
            <input value={reason} onChange={(event) => setReason(event.target.value)} />
          </Field>
          <Button
            disabled={world.holder === undefined || authority.trim() === '' || reason.trim() === ''}
            onClick={() =>
              void book.record(
                'nonconformance-settled',
                { nonconformance: one.id, disposition, authority: authority.trim(), reason: reason.trim() },
                world.holder,
              )
            }
          >
            {say('office.settle-do', { name })}
          </Button>
        </Row>
      )}
    </Banner>
  );
}
