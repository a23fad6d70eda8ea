import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Field, Section } from '../../../ui/page.tsx';
import { FaultLine } from './fault-line.tsx';
import { type Account, type Fault, faultOf, server, useSession } from './session.ts';

const hasPasskeys = typeof PublicKeyCredential !== 'undefined' && 'parseRequestOptionsFromJSON' in PublicKeyCredential;

/** By name and password, or by a passkey where the browser has them. */
export function SignIn({ onSignedIn }: { readonly onSignedIn: (account: Account) => void }) {
  const say = useOffice();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const [fault, setFault] = useState<Fault>();
  const { session } = useSession();
  if (session.kind === 'out' && session.yard === 'none')
    return (
      <Section title={say('office.no-yard')}>
        <p>{say('office.no-yard-text')}</p>
        <p>
          <code>npx clampwright serve</code>
        </p>
      </Section>
    );
  const byPassword = async () => {
    const answer = await server('signIn', { body: { name, password } });
    setFault(faultOf(answer));
    if (answer.kind === 'answered') onSignedIn(answer.value);
  };
  const byPasskey = async () => {
    const question = await server('askPasskey', {});
    if (question.kind !== 'answered') return setFault(faultOf(question));
    const publicKey = PublicKeyCredential.parseRequestOptionsFromJSON(question.value as unknown as PublicKeyCredentialRequestOptionsJSON);
    const shown = await navigator.credentials.get({ publicKey }).catch(() => null);
    if (!(shown instanceof PublicKeyCredential)) return undefined;
    const answer = await server('signInWithPasskey', { body: { response: shown.toJSON() as unknown as Record<string, unknown> } });
    setFault(faultOf(answer));
    if (answer.kind === 'answered') onSignedIn(answer.value);
    return undefined;
  };
  return (
    <Section title={say('office.sign-in')}>
      <form
        style={{ display: 'grid', gap: '0.8rem' }}
        onSubmit={(event) => {
          event.preventDefault();
          void byPassword();
        }}
      >
        <Field label={say('office.name')}>
          <input value={name} onChange={(event) => setName(event.target.value)} autoComplete="username" />
        </Field>
        <Field label={say('office.password')}>
          <input type="password" value={password} onChange={(event) => setPassword(event.target.value)} autoComplete="current-password" />
        </Field>
        {session.kind === 'out' && session.yard === 'silent' ? <Banner level="plain">{say('office.unreachable')}</Banner> : null}
        <FaultLine fault={fault} />
        <Button kind="act" type="submit" disabled={name === '' || password === ''}>
          {say('office.sign-in')}
        </Button>
      </form>
      {hasPasskeys ? <Button onClick={() => void byPasskey()}>{say('office.passkey')}</Button> : null}
    </Section>
  );
}
