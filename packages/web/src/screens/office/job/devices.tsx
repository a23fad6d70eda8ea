import type { Answered } from '@clampwright/sync';
import { useCallback, useEffect, useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import css from '../../../ui/page.module.css';
import { Button, Field, Row, Section } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';
import { FaultLine } from './fault-line.tsx';
import { type Fault, faultOf, server } from './session.ts';
import { Square } from './square.tsx';

type Known = Answered<'devices'>['devices'][number];

/** Devices of the job: a code for a new one, and what was enrolled or revoked entered into the book. */
export function Devices() {
  const say = useOffice();
  const { world, book } = useJob();
  const [devices, setDevices] = useState<readonly Known[]>([]);
  const [name, setName] = useState('');
  const [code, setCode] = useState<Answered<'openEnrolment'>>();
  const [fault, setFault] = useState<Fault>();
  const ask = useCallback(async () => {
    const answer = await server('devices', {});
    setFault(faultOf(answer));
    if (answer.kind !== 'answered') return;
    const mine = answer.value.devices.filter(({ books }) => books.includes(book.job));
    setDevices(mine);
    const inBook = new Set(book.fold.ids('device'));
    for (const { device, key, name: called } of mine)
      if (!inBook.has(device)) await book.record('device-enrolled', { device, key, name: called }, world.holder);
  }, [book, world.holder]);
  useEffect(() => {
    void ask();
    const every = setInterval(() => void ask(), 10_000);
    return () => clearInterval(every);
  }, [ask]);
  const open = async () => {
    const answer = await server('openEnrolment', { body: { name: name.trim(), books: [book.job] } });
    setFault(faultOf(answer));
    if (answer.kind === 'answered') setCode(answer.value);
  };
  const revoke = async (device: string) => {
    setFault(faultOf(await server('revokeDevice', { params: { device } })));
    await book.record('device-revoked', { device, reason: say('office.revoke') }, world.holder);
    await ask();
  };
  return (
    <Section title={say('office.devices')}>
      <ul className={css.list}>
        {devices.map(({ device, name: called, revoked }) => (
          <li key={device} className={css.item}>
            <span>
              <strong>{called}</strong>
              <small>{device}</small>
            </span>
            {revoked === undefined ? (
              <Button kind="stop" disabled={device === world.device.id} onClick={() => void revoke(device)}>
                {say('office.revoke')}
              </Button>
            ) : (
              <span>{say('office.revoked')}</span>
            )}
          </li>
        ))}
      </ul>
      <FaultLine fault={fault} />
      <Row>
        <Field label={say('office.device-name')}>
          <input value={name} onChange={(event) => setName(event.target.value)} autoComplete="off" />
        </Field>
        <Button disabled={name.trim() === ''} onClick={() => void open()}>
          {say('office.new-code')}
        </Button>
      </Row>
      {code ? (
        <>
          <p>
            <strong>{say('office.code', { code: code.code, time: new Date(code.expires).toLocaleTimeString() })}</strong>
          </p>
          <Square text={`${location.origin}/#join=${code.code}`} />
        </>
      ) : null}
    </Section>
  );
}
