import { OfficeSpeech, useOffice } from '../../language/office-speech.tsx';
import { Button, Page, Section, Soft } from '../../ui/page.tsx';
import { useBook, useWorld } from '../../ui/world-context.ts';
import { Account } from './account.tsx';
import { Board } from './board.tsx';
import { Devices } from './devices.tsx';
import { Handover } from './handover.tsx';
import { Jobs } from './jobs.tsx';
import { ModelIn } from './model-in.tsx';
import { Papers } from './papers.tsx';
import { People } from './people.tsx';
import { PlanIssue } from './plan-issue.tsx';
import { server, useSession } from './session.ts';
import { Settle } from './settle.tsx';
import { SignIn } from './sign-in.tsx';

interface OfficeProps {
  readonly onEnrolled: () => void;
}

/** Where a job is set up, issued, watched and handed over. What is recorded here is recorded by this browser, as on any device. */
export const OfficeScreen = (props: OfficeProps) => (
  <OfficeSpeech>
    <Office {...props} />
  </OfficeSpeech>
);

function Office({ onEnrolled }: OfficeProps) {
  const say = useOffice();
  const world = useWorld();
  const book = useBook();
  const { session, setAccount } = useSession();
  return (
    <Page title={say('office.title')} back="/">
      {session.kind === 'asking' ? <Soft>{say('app.loading')}</Soft> : null}
      {session.kind === 'out' ? <SignIn onSignedIn={setAccount} /> : null}
      {session.kind === 'in' ? (
        <>
          <Soft>{say('office.signed-in', { name: session.account.name })}</Soft>
          <Jobs onEnrolled={onEnrolled} />
          {world && book ? (
            <>
              <People />
              <ModelIn />
              <PlanIssue />
              <Devices />
              <Board />
              <Settle />
              <Papers />
              <Handover />
            </>
          ) : null}
          <Section title={session.account.name}>
            <Account />
            <Button onClick={() => void server('signOut', {}).then(() => setAccount(undefined))}>{say('office.sign-out')}</Button>
          </Section>
        </>
      ) : null}
    </Page>
  );
}
