import { BREAK_MINUTES, forecastWork, type ToldPulls } from '@clampwright/core';
import { useDeferredValue, useMemo } from 'react';
import type { Book } from '../../../job/book.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Section, Soft } from '../../../ui/page.tsx';
import own from './watch.module.css';

const HOUR_MS = 3_600_000;

/** When the rest will be done, as a forecast: from the crew's own times, with what it rests on. */
export function Forecast({ book, left, version }: { readonly book: Book; readonly left: number; readonly version: number }) {
  const say = useOffice();
  const { figure } = useTrade();
  // bolts first, the forecast a moment later
  const settled = useDeferredValue(version);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the fold is asked again when it has grown
  const told = useMemo(() => toldPulls(book), [book, settled]);
  const { each, likely, bounds, basis } = useMemo(() => forecastWork(told, left), [told, left]);
  const now = Date.now();
  const lately = new Set(told.filter(({ at }) => now - at < HOUR_MS).map(({ device }) => device)).size;
  const crews = Math.max(1, lately);
  const hours = (minutes: number) => say('live.hours', { hours: figure(minutes / 60, 1) });
  if (left === 0) return null;
  return (
    <Section title={say('live.forecast')}>
      <p className={own.forecast}>
        {bounds
          ? say('live.rest', { likely: hours(likely / crews), low: hours(bounds.low / crews), high: hours(bounds.high / crews) })
          : say('live.rest-about', { likely: hours(likely / crews) })}
      </p>
      <Soft>
        {say('live.rest-of', { left, crews })}{' '}
        {basis.kind === 'log'
          ? say('live.basis', { bolts: basis.bolts, hours: hours(basis.minutes), each: figure(each, 2), pause: BREAK_MINUTES })
          : say('live.basis-usual', { each: figure(each, 2) })}
      </Soft>
    </Section>
  );
}

/** Bolts as they were told, those told together as one; what was entered later from paper says nothing of pace. */
function toldPulls({ fold }: Book): ToldPulls[] {
  const byEntry = new Map<string, { device: string; at: number; bolts: number }>();
  for (const id of fold.ids('joint'))
    for (const { steps } of fold.state('joint', id).bolts.values())
      for (const list of Object.values(steps))
        for (const { entry, device, at, paper } of list) {
          if (paper !== undefined) continue;
          const known = byEntry.get(entry);
          if (known) known.bolts += 1;
          else byEntry.set(entry, { device, at: Date.parse(at), bolts: 1 });
        }
  return [...byEntry.values()];
}
