import type { Answered } from '@clampwright/sync';
import { useCallback, useEffect, useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import css from '../../../ui/page.module.css';
import { Button } from '../../../ui/page.tsx';
import { FaultLine } from '../job/fault-line.tsx';
import { type Fault, faultOf, server } from '../job/session.ts';

/** One’s own passkeys: a lost device’s is removed here. */
export function Passkeys() {
  const say = useOffice();
  const { moment } = useTrade();
  const [keys, setKeys] = useState<Answered<'passkeys'>['passkeys']>([]);
  const [fault, setFault] = useState<Fault>();
  const ask = useCallback(async () => {
    const answer = await server('passkeys', {});
    if (answer.kind === 'answered') setKeys(answer.value.passkeys);
  }, []);
  useEffect(() => void ask(), [ask]);
  if (keys.length === 0) return null;
  return (
    <>
      <ul className={css.list} aria-label={say('set.passkeys')}>
        {keys.map(({ passkey, label, added }) => (
          <li key={passkey} className={css.item}>
            <span>
              <b>{label}</b>
              <small>{say('set.passkey-added', { time: moment(added) })}</small>
            </span>
            <Button
              kind="stop"
              onClick={() =>
                void server('removePasskey', { params: { passkey } }).then((answer) => {
                  setFault(faultOf(answer));
                  return ask();
                })
              }
            >
              {say('set.remove-passkey', { label })}
            </Button>
          </li>
        ))}
      </ul>
      <FaultLine fault={fault} />
    </>
  );
}
