import type { ReactNode } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, LinkButton, Soft } from '../../../ui/page.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { isFor, type JobPageName } from '../shell/pages.ts';
import { useSession } from './session.ts';
import { SignIn } from './sign-in.tsx';

interface GateProps {
  readonly page: JobPageName;
  readonly title?: string;
  readonly wide?: boolean;
  /** what the page works on: on this device, for whoever is signed in, or for nobody yet */
  readonly has: 'device' | 'session' | 'nothing';
  readonly children: ReactNode;
}

/** What stands before a page of the yard: signing in, the role, a job to work on. An enrolled device needs no server to show what lies on it. */
export function Gate({ page, title, wide = false, has, children }: GateProps) {
  const say = useOffice();
  const { session, setAccount } = useSession();
  const roles = session.kind === 'in' ? session.account.roles : undefined;
  const inside = () => {
    if (!isFor(page, roles)) return <Banner level="plain">{say('office.not-your-role')}</Banner>;
    if (has === 'device') return children;
    if (session.kind === 'asking') return <Soft>{say('app.loading')}</Soft>;
    if (session.kind === 'out') return <SignIn onSignedIn={setAccount} />;
    if (has === 'session') return children;
    return (
      <>
        <Banner level="plain">{say('office.no-job')}</Banner>
        <LinkButton href="/office">{say('office.page-start')}</LinkButton>
      </>
    );
  };
  return (
    <OfficeShell title={title ?? say(`office.page-${page}`)} wide={wide}>
      {inside()}
    </OfficeShell>
  );
}
