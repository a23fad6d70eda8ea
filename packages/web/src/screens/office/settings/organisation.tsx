import { useEffect, useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Field, FileButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { FaultLine } from '../job/fault-line.tsx';
import { type Fault, faultOf, server } from '../job/session.ts';

const MOST_MARK = 40_000;

/** Whose name, address and mark stand on the reports that the server hands out. */
export function Organisation() {
  const say = useOffice();
  const [name, setName] = useState('');
  const [address, setAddress] = useState('');
  const [has, setHas] = useState(false);
  const [mark, setMark] = useState<string | null>();
  const [fault, setFault] = useState<Fault>();
  const [state, setState] = useState<'saved' | 'too large'>();
  useEffect(() => {
    void server('organisation', {}).then((answer) => {
      if (answer.kind !== 'answered') return;
      setName(answer.value.name ?? '');
      setAddress(answer.value.address ?? '');
      setHas(answer.value.mark);
    });
  }, []);
  const take = async (file: File | undefined) => {
    if (!file) return;
    setState(file.size > MOST_MARK ? 'too large' : undefined);
    if (file.size <= MOST_MARK) setMark(base64(new Uint8Array(await file.arrayBuffer())));
  };
  const save = async () => {
    const answer = await server('setOrganisation', {
      body: { name: name.trim(), address: address.trim(), ...(mark === undefined ? {} : { mark }) },
    });
    setFault(faultOf(answer));
    if (answer.kind !== 'answered') return;
    setState('saved');
    if (mark !== undefined) setHas(mark !== null);
    setMark(undefined);
  };
  return (
    <Section title={say('set.organisation')}>
      <Soft>{say('set.organisation-text')}</Soft>
      <Row>
        <Field label={say('set.organisation-name')}>
          <input value={name} maxLength={80} onChange={(event) => setName(event.target.value)} />
        </Field>
        <Field label={say('set.address')}>
          <input value={address} maxLength={200} onChange={(event) => setAddress(event.target.value)} />
        </Field>
      </Row>
      <Row>
        <FileButton label={say('set.mark')} accept="image/png,image/jpeg" onChosen={([picture]) => void take(picture)} />
        <Soft>{say('set.mark-hint')}</Soft>
      </Row>
      <p>{say(mark === null || (mark === undefined && !has) ? 'set.mark-none' : mark === undefined ? 'set.mark-there' : 'set.mark-new')}</p>
      {state === 'too large' ? <Banner level="mind">{say('set.mark-large')}</Banner> : null}
      <FaultLine fault={fault} />
      {state === 'saved' ? <Banner level="fine">{say('set.saved')}</Banner> : null}
      <Button kind="act" disabled={name.trim() === ''} onClick={() => void save()}>
        {say('set.save')}
      </Button>
      {has || mark ? <Button onClick={() => setMark(null)}>{say('set.mark-remove')}</Button> : null}
    </Section>
  );
}

const base64 = (bytes: Uint8Array): string => btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(''));
