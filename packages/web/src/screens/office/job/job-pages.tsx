import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, LinkButton, Soft } from '../../../ui/page.tsx';
import { useBook, useWorld } from '../../../ui/world-context.ts';
import { OfficeShell } from '../shell/office-shell.tsx';
import { JOB_PAGES } from '../shell/pages.ts';
import { Account } from './account.tsx';
import { Board } from './board.tsx';
import { Devices } from './devices.tsx';
import { Handover } from './handover.tsx';
import { Papers } from './papers.tsx';
import { People } from './people.tsx';
import { server, useSession } from './session.ts';
import { Settle } from './settle.tsx';
import { SignIn } from './sign-in.tsx';

/** What a job of the yard has pages for; another one is a line here and in shell/pages.ts. */
const PAGES = {
  board: Board,
  settle: Settle,
  people: People,
  devices: Devices,
  papers: Papers,
  handover: Handover,
} as const;
type JobPage = keyof typeof PAGES;

/** A page of a job of the yard, or of the account by which one is signed in. */
export function JobPages({ page }: { readonly page: string }) {
  const say = useOffice();
  const world = useWorld();
  const book = useBook();
  const { session, setAccount } = useSession();
  if (!Object.hasOwn(JOB_PAGES, page))
    return (
      <OfficeShell title={say('app.not-found')}>
        <LinkButton href="/office">{say('office.page-start')}</LinkButton>
      </OfficeShell>
    );
  const Content = page === 'account' ? undefined : PAGES[page as JobPage];
  return (
    <OfficeShell title={say(`office.page-${page as JobPage | 'account'}`)}>
      {session.kind === 'asking' ? <Soft>{say('app.loading')}</Soft> : null}
      {session.kind === 'out' ? <SignIn onSignedIn={setAccount} /> : null}
      {session.kind === 'in' && page === 'account' ? (
        <>
          <Soft>{say('office.signed-in', { name: session.account.name })}</Soft>
          <Account />
          <Button onClick={() => void server('signOut', {}).then(() => setAccount(undefined))}>{say('office.sign-out')}</Button>
        </>
      ) : null}
      {session.kind === 'in' && Content ? (
        world && book ? (
          <Content />
        ) : (
          <>
            <Banner level="plain">{say('office.no-job')}</Banner>
            <LinkButton href="/office">{say('office.page-start')}</LinkButton>
          </>
        )
      ) : null}
    </OfficeShell>
  );
}
