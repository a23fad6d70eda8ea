import type { CivilDate } from '@clampwright/core';
import { daysBetween } from '@clampwright/core';
import { Link } from 'wouter';
import type { StoreTool } from '../../../job/store-tools.ts';
import { today } from '../../../job/today.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Button, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import own from './tools.module.css';

/** What falls due, the earliest first, and the same as a file for a calendar. */
export function DueDays({ tools }: { readonly tools: readonly StoreTool[] }) {
  const say = useOffice();
  const now = today();
  const due = tools
    .flatMap(({ serial, name, due: on, tool }) =>
      on === undefined || tool.withdrawn ? [] : [{ serial, name, on: on as CivilDate, number: tool.certificate }],
    )
    .sort((a, b) => a.on.localeCompare(b.on));
  const download = async () => {
    const { dueCalendar } = await import('@clampwright/papers/out');
    const days = due.map(({ serial, name, on, number }) => ({
      id: `tool-${serial}`,
      on,
      title: say('store.due-title', { serial }),
      text: [name, number === undefined ? '' : say('store.certificate-number', { number })].filter(Boolean).join(', '),
    }));
    save('due-dates.ics', dueCalendar(say('store.title'), days, new Date()));
  };
  return (
    <Section title={say('store.due')}>
      {due.length === 0 ? <Soft>{say('store.due-none')}</Soft> : null}
      <ul className={own.days}>
        {due.map(({ serial, name, on }) => {
          const left = daysBetween(now, on);
          return (
            <li key={serial} data-level={left < 0 ? 'stop' : left < 30 ? 'mind' : undefined}>
              <time dateTime={on}>{on}</time>
              <Link href={`/office/tools/${encodeURIComponent(serial)}`}>{serial}</Link>
              <span>{name}</span>
              <span>{left < 0 ? say('store.days-over', { days: -left }) : say('store.days-left', { days: left })}</span>
            </li>
          );
        })}
      </ul>
      {due.length > 0 ? <Button onClick={() => void download()}>{say('store.due-file')}</Button> : null}
    </Section>
  );
}
