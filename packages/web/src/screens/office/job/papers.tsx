import type { Plan } from '@clampwright/core';
import { readUtf8 } from '@clampwright/record';
import { apiClient } from '@clampwright/sync';
import { LANGUAGES, type Language } from '@clampwright/words/app';
import { useState } from 'react';
import { attachmentOf } from '../../../job/attachment-of.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { useSettings } from '../../../ui/settings.ts';
import { useJob } from '../../../ui/world-context.ts';
import { FaultLine } from './fault-line.tsx';
import type { PaperLanguages, PaperName } from './make-paper.ts';
import { type Fault, faultOf } from './session.ts';

/** A long log is a long report. */
const patient = apiClient({ server: location.origin, timeoutMs: 15 * 60_000 });

const PAPERS: readonly PaperName[] = [
  'cards-a6',
  'cards-a5',
  'cards-two-up',
  'tags-sheet',
  'tags-roll',
  'kit',
  'plan',
  'xlsx',
  'csv',
  'ics',
];

/** Papers of the plan in force, made on this device: with or without network. The report comes from the server, which has the whole log. */
export function Papers() {
  const say = useOffice();
  const { world, book } = useJob();
  const settings = useSettings();
  const [first, setFirst] = useState<Language>(settings.language);
  const [second, setSecond] = useState<Language | ''>('');
  const [state, setState] = useState<{ readonly name: PaperName | 'report'; readonly percent: number } | 'failed'>();
  const [fault, setFault] = useState<Fault>();
  const issued = book.fold.state('book', 'book').plans.findLast(({ withdrawn }) => withdrawn === undefined);
  if (!issued) return null;
  const languages: PaperLanguages = second === '' || second === first ? [first] : [first, second];
  const make = async (name: PaperName) => {
    const bytes = await attachmentOf(world, book, issued.hash);
    const text = bytes && readUtf8(bytes);
    if (text === undefined) return setState('failed');
    setState({ name, percent: 0 });
    const { makePaper } = await import('./make-paper.ts');
    const files = await makePaper(name, JSON.parse(text) as Plan, languages, (done, of) =>
      setState({ name, percent: Math.floor((100 * done) / of) }),
    );
    for (const [file, content] of Object.entries(files)) save(file, content);
    return setState(undefined);
  };
  /** From the server, which has the whole log: what this browser recorded is sent first. */
  const report = async () => {
    setState({ name: 'report', percent: 0 });
    await world.send();
    const answer = await patient('report', { params: { job: book.job, languages: languages.filter(Boolean).join('-') } });
    setState(undefined);
    setFault(faultOf(answer));
    if (answer.kind === 'answered') save(`${book.job}.pdf`, answer.value);
  };
  return (
    <Section title={say('office.papers')}>
      <Soft>{say('office.papers-text')}</Soft>
      <FaultLine fault={fault} />
      {state === 'failed' ? <Banner level="mind">{say('joint.no-card')}</Banner> : null}
      <Row>
        <Field label={say('office.paper-language')}>
          <Languages value={first} onChange={setFirst} />
        </Field>
        <Field label={say('office.paper-beneath')}>
          <Languages value={second} none={say('office.paper-alone')} onChange={setSecond} />
        </Field>
      </Row>
      <Row>
        {PAPERS.map((name) => (
          <Button key={name} disabled={typeof state === 'object'} onClick={() => void make(name)}>
            {typeof state === 'object' && state.name === name ? `${state.percent} %` : say(`office.paper-${name}`)}
          </Button>
        ))}
        <Button disabled={typeof state === 'object'} onClick={() => void report()}>
          {state !== undefined && state !== 'failed' && state.name === 'report' ? '…' : say('office.paper-report')}
        </Button>
      </Row>
    </Section>
  );
}

interface LanguagesProps<V extends Language | ''> {
  readonly value: V;
  /** what no language is called, where there may be none */
  readonly none?: string;
  readonly onChange: (value: V) => void;
}

const Languages = <V extends Language | ''>({ value, none, onChange }: LanguagesProps<V>) => (
  <select value={value} onChange={(event) => onChange(event.target.value as V)}>
    {none === undefined ? null : <option value="">{none}</option>}
    {Object.entries(LANGUAGES).map(([code, name]) => (
      <option key={code} value={code} lang={code}>
        {name}
      </option>
    ))}
  </select>
);
