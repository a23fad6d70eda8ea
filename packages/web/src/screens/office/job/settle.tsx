import type { Nonconformance } from '@clampwright/record';
import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Banner, Button, Field, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';

const DISPOSITIONS = ['use as is', 'rework', 'replace'] as const;
const MOST = 50;

/** What contradicts itself or was reported, to be settled by a named person. What is alike is settled together, each with its own entry. */
export function Settle() {
  const say = useOffice();
  const { world, book } = useJob();
  const { says } = useNotice();
  const groups = new Map<string, Nonconformance[]>();
  for (const one of book.fold.nonconformances()) {
    if (one.state === 'settled') continue;
    const tag = one.joint === undefined ? '' : `${book.fold.state('joint', one.joint).tag ?? one.joint}: `;
    const text = `${tag}${one.notice ? says(one.notice) : `${one.number ?? ''} ${one.text}`} (${say(`office.state-${one.state}`)})`;
    groups.set(text, [...(groups.get(text) ?? []), one]);
  }
  return (
    <Section title={say('office.settle')}>
      {groups.size === 0 ? <Soft>{say('office.settle-none')}</Soft> : null}
      {groups.size > 0 && world.holder === undefined ? <LinkButton href="/who">{say('who.title')}</LinkButton> : null}
      {[...groups].slice(0, MOST).map(([text, alike]) => (
        <Alike key={text} text={text} alike={alike} />
      ))}
    </Section>
  );
}

function Alike({ text, alike }: { readonly text: string; readonly alike: readonly Nonconformance[] }) {
  const say = useOffice();
  const { world, book } = useJob();
  const [disposition, setDisposition] = useState<(typeof DISPOSITIONS)[number]>('use as is');
  const [authority, setAuthority] = useState('');
  const [reason, setReason] = useState('');
  const name = world.holder === undefined ? say('who.nobody') : (book.nameOf(world.holder) ?? world.holder);
  const each = async (record: (one: Nonconformance) => Promise<unknown>) => {
    for (const one of alike) await record(one);
  };
  return (
    <Banner level="mind">
      <p>
        {alike.length > 1 ? `${alike.length} × ` : ''}
        {text}
      </p>
      {alike[0]!.state === 'to be inspected again' ? (
        <Row>
          <p>{say('office.settle-again')}</p>
          {([true, false] as const).map((passed) => (
            <Button
              key={String(passed)}
              disabled={world.holder === undefined}
              onClick={() => void each(({ id }) => book.record('nonconformance-reinspected', { nonconformance: id, passed }, world.holder))}
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
              void each(({ id }) =>
                book.record(
                  'nonconformance-settled',
                  { nonconformance: id, disposition, authority: authority.trim(), reason: reason.trim() },
                  world.holder,
                ),
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
