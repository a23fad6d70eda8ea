import { useBook, useWorld } from '../../../ui/world-context.ts';
import type { JobPageName } from '../shell/pages.ts';
import { Gate } from './gate.tsx';
import { Papers } from './papers.tsx';
import { People } from './people.tsx';

/** Pages of the job in hand that this device alone has everything for. */
const PAGES = { people: People, papers: Papers } as const satisfies Partial<Record<JobPageName, unknown>>;

export function JobPage({ page }: { readonly page: keyof typeof PAGES }) {
  const world = useWorld();
  const book = useBook();
  const Content = PAGES[page];
  return (
    <Gate page={page} has={world && book ? 'device' : 'nothing'}>
      <Content />
    </Gate>
  );
}
