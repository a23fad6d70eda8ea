import { LANGUAGES, type Language } from '@clampwright/words/app';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Field, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { change, type Settings, useSettings } from '../../../ui/settings.ts';
import { useBook, useWorld } from '../../../ui/world-context.ts';
import { Account } from '../job/account.tsx';
import { Devices } from '../job/devices.tsx';
import { server, useSession } from '../job/session.ts';
import { SignIn } from '../job/sign-in.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { Accounts } from './accounts.tsx';
import { Keeping } from './keeping.tsx';
import { Organisation } from './organisation.tsx';
import { Passkeys } from './passkeys.tsx';

/** What is set, for whom: this browser, one’s own account, the organisation, devices, accounts, and what is carried away. */
export function SettingsPage() {
  const say = useOffice();
  const world = useWorld();
  const book = useBook();
  const { session, setAccount } = useSession();
  const account = session.kind === 'in' ? session.account : undefined;
  const has = (...roles: readonly string[]) => account?.roles.some((role) => roles.includes(role)) ?? false;
  return (
    <OfficeShell title={say('office.page-settings')}>
      <ThisBrowser />
      {session.kind === 'asking' ? <Soft>{say('app.loading')}</Soft> : null}
      {session.kind === 'out' ? <SignIn onSignedIn={setAccount} /> : null}
      {account ? (
        <Section title={say('set.account')}>
          <p>{say('office.signed-in', { name: account.name })}</p>
          <Soft>
            {say('set.roles', { roles: account.roles.map((role) => say(`office.role-${role}`)).join(', ') })}{' '}
            {account.books === 'all' ? say('set.all-jobs') : say('set.some-jobs', { count: account.books.length })}
          </Soft>
          <details>
            <summary>{say('office.change-password')}</summary>
            <Account />
          </details>
          <Passkeys />
          <Button onClick={() => void server('signOut', {}).then(() => setAccount(undefined))}>{say('office.sign-out')}</Button>
        </Section>
      ) : null}
      {has('planner') ? <Organisation /> : null}
      {has('planner', 'store') && !(world && book) ? (
        <Section title={say('office.devices')}>
          <Banner level="plain">{say('set.devices-need-job')}</Banner>
          <LinkButton href="/office">{say('office.page-start')}</LinkButton>
        </Section>
      ) : null}
      {has('planner', 'store') && world && book ? <Devices /> : null}
      {has('planner') ? <Accounts own={account!.name} /> : null}
      {has('planner') ? <Keeping all={account!.books === 'all'} book={book} /> : null}
    </OfficeShell>
  );
}

function ThisBrowser() {
  const say = useOffice();
  const settings = useSettings();
  return (
    <Section title={say('set.browser')}>
      <Row>
        <Field label={say('settings.language')}>
          <select value={settings.language} onChange={(event) => change({ language: event.target.value as Language })}>
            {Object.entries(LANGUAGES).map(([code, name]) => (
              <option key={code} value={code} lang={code}>
                {name}
              </option>
            ))}
          </select>
        </Field>
        <Field label={say('settings.theme')}>
          <select value={settings.theme} onChange={(event) => change({ theme: event.target.value as Settings['theme'] })}>
            {(['system', 'light', 'dark'] as const).map((theme) => (
              <option key={theme} value={theme}>
                {say(`settings.theme-${theme}`)}
              </option>
            ))}
          </select>
        </Field>
      </Row>
      <Soft>{say('set.units')}</Soft>
      <LinkButton href="/office/define/job">{say('define.units')}</LinkButton>
    </Section>
  );
}
