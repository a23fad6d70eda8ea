import { useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Field } from '../../../ui/page.tsx';
import { FaultLine } from './fault-line.tsx';
import { type Fault, faultOf, server } from './session.ts';

/** One's own password and passkeys. */
export function Account() {
  const say = useOffice();
  const [old, setOld] = useState('');
  const [password, setPassword] = useState('');
  const [fault, setFault] = useState<Fault>();
  const [done, setDone] = useState<'office.password-changed' | 'office.passkey-added'>();
  const change = async () => {
    const answer = await server('changePassword', { body: { old, password } });
    setFault(faultOf(answer));
    setDone(answer.kind === 'answered' ? 'office.password-changed' : undefined);
    setOld('');
    setPassword('');
  };
  const addPasskey = async () => {
    const offer = await server('offerPasskey', {});
    if (offer.kind !== 'answered') return setFault(faultOf(offer));
    const publicKey = PublicKeyCredential.parseCreationOptionsFromJSON(offer.value as unknown as PublicKeyCredentialCreationOptionsJSON);
    const made = await navigator.credentials.create({ publicKey }).catch(() => null);
    if (!(made instanceof PublicKeyCredential)) return undefined;
    const answer = await server('addPasskey', {
      body: { label: navigator.platform || 'device', response: made.toJSON() as unknown as Record<string, unknown> },
    });
    setFault(faultOf(answer));
    setDone(answer.kind === 'answered' ? 'office.passkey-added' : undefined);
    return undefined;
  };
  return (
    <>
      <form
        style={{ display: 'grid', gap: '0.8rem' }}
        onSubmit={(event) => {
          event.preventDefault();
          void change();
        }}
      >
        <Field label={say('office.old-password')}>
          <input type="password" value={old} onChange={(event) => setOld(event.target.value)} autoComplete="current-password" />
        </Field>
        <Field label={say('office.new-password')}>
          <input
            type="password"
            value={password}
            onChange={(event) => setPassword(event.target.value)}
            autoComplete="new-password"
            minLength={10}
          />
        </Field>
        <FaultLine fault={fault} />
        {done === undefined ? null : <Banner level="fine">{say(done)}</Banner>}
        <Button type="submit" disabled={old === '' || password.length < 10}>
          {say('office.change-password')}
        </Button>
      </form>
      {typeof PublicKeyCredential !== 'undefined' && 'parseCreationOptionsFromJSON' in PublicKeyCredential ? (
        <Button onClick={() => void addPasskey()}>{say('office.add-passkey')}</Button>
      ) : null}
    </>
  );
}
