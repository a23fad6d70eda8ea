import type { Plan } from '@clampwright/core';
import { readUtf8 } from '@clampwright/record';
import { useState } from 'react';
import { useOffice } from '../../language/office-speech.tsx';
import { Banner, Button, Row, Section, Soft } from '../../ui/page.tsx';
import { save } from '../../ui/save.ts';
import { useJob } from '../../ui/world-context.ts';
import type { PaperName } from './make-paper.ts';

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

/** Papers of the plan in force, made on this device: with or without network. The report lies in the handover file. */
export function Papers() {
  const say = useOffice();
  const { world, book } = useJob();
  const [state, setState] = useState<{ readonly name: PaperName; readonly percent: number } | 'failed'>();
  const issued = book.fold.state('book', 'book').plans.findLast(({ withdrawn }) => withdrawn === undefined);
  if (!issued) return null;
  const make = async (name: PaperName) => {
    const bytes = await world.device.attachment(book.job, issued.hash);
    const text = bytes && readUtf8(bytes);
    if (text === undefined) return setState('failed');
    setState({ name, percent: 0 });
    const { makePaper } = await import('./make-paper.ts');
    const files = await makePaper(name, JSON.parse(text) as Plan, (done, of) => setState({ name, percent: Math.floor((100 * done) / of) }));
    for (const [file, content] of Object.entries(files)) save(file, content);
    return setState(undefined);
  };
  return (
    <Section title={say('office.papers')}>
      <Soft>{say('office.papers-text')}</Soft>
      {state === 'failed' ? <Banner level="mind">{say('joint.no-card')}</Banner> : null}
      <Row>
        {PAPERS.map((name) => (
          <Button key={name} disabled={typeof state === 'object'} onClick={() => void make(name)}>
            {typeof state === 'object' && state.name === name ? `${state.percent} %` : say(`office.paper-${name}`)}
          </Button>
        ))}
      </Row>
    </Section>
  );
}
