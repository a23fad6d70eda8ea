import type { Book } from '../../../job/book.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { Section, Soft } from '../../../ui/page.tsx';
import own from './watch.module.css';

const MOST = 40;

/** Entries that came late, or were entered from paper: what the board showed before them was not the whole of it. */
export function Late({ book }: { readonly book: Book }) {
  const say = useOffice();
  const { figure, moment } = useTrade();
  const late = book.late();
  const byDevice = new Map<string, { count: number; minutes: number; last: string }>();
  for (const { kept, minutes } of late) {
    const { device, at } = kept.entry;
    const known = byDevice.get(device) ?? { count: 0, minutes: 0, last: at };
    byDevice.set(device, { count: known.count + 1, minutes: Math.max(known.minutes, minutes), last: [known.last, at].toSorted().at(-1)! });
  }
  return (
    <Section title={say('live.late')}>
      {byDevice.size === 0 ? <Soft>{say('live.late-none')}</Soft> : null}
      <ul className={own.lines}>
        {[...byDevice].slice(0, MOST).map(([device, { count, minutes, last }]) => (
          <li key={device}>
            {say('live.late-of', {
              name: book.fold.state('device', device).name ?? device,
              count,
              hours: figure(minutes / 60, 1),
              time: moment(last),
            })}
          </li>
        ))}
      </ul>
    </Section>
  );
}
