import { apiClient } from '@clampwright/sync';
import { useState } from 'react';
import type { Book } from '../../../job/book.ts';
import { today } from '../../../job/today.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import page from '../../../ui/page.module.css';
import { Banner, Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { FaultLine } from '../job/fault-line.tsx';
import { type Fault, faultOf } from '../job/session.ts';

/** Large files take their time. */
const patient = apiClient({ server: location.origin, timeoutMs: 30 * 60_000 });

/** What may be carried away, and what each of it is good for. */
export function Keeping({ all, book }: { readonly all: boolean; readonly book: Book | undefined }) {
  const say = useOffice();
  const [password, setPassword] = useState('');
  const [busy, setBusy] = useState<'backup' | 'export'>();
  const [fault, setFault] = useState<Fault>();
  const [done, setDone] = useState(false);
  const backup = async () => {
    setBusy('backup');
    setDone(false);
    const answer = await patient('backup', { body: { password } });
    setPassword('');
    setBusy(undefined);
    setFault(faultOf(answer));
    if (answer.kind !== 'answered') return;
    save(`clampwright-${today()}.backup`, answer.value);
    setDone(true);
  };
  const carry = async (job: string) => {
    setBusy('export');
    const answer = await patient('exportBook', { params: { job } });
    setBusy(undefined);
    setFault(faultOf(answer));
    if (answer.kind === 'answered') save(`${job}-open.zip`, answer.value);
  };
  return (
    <Section title={say('set.keeping')}>
      <FaultLine fault={fault} />
      <h3>{say('set.backup')}</h3>
      <Soft>{say('set.backup-text')}</Soft>
      {all ? (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void backup();
          }}
        >
          <Row>
            <Field label={say('set.password-again')}>
              <input
                type="password"
                value={password}
                onChange={(event) => setPassword(event.target.value)}
                autoComplete="current-password"
              />
            </Field>
            <Button type="submit" disabled={password === '' || busy !== undefined}>
              {say(busy === 'backup' ? 'set.writing' : 'set.backup-do')}
            </Button>
          </Row>
        </form>
      ) : (
        <Banner level="plain">{say('set.backup-all')}</Banner>
      )}
      {done ? <Banner level="fine">{say('set.backup-done')}</Banner> : null}
      <h3>{say('set.restore')}</h3>
      <Soft>{say('set.restore-text')}</Soft>
      <p className={page.code}>clampwright restore FILE --data FOLDER</p>
      <h3>{say('set.export')}</h3>
      <Soft>{say('set.export-text')}</Soft>
      {book ? (
        <Button disabled={busy !== undefined} onClick={() => void carry(book.job)}>
          {say(busy === 'export' ? 'set.writing' : 'set.export-do', { title: book.fold.state('book', 'book').title ?? book.job })}
        </Button>
      ) : (
        <Soft>{say('office.no-job')}</Soft>
      )}
      <p className={page.code}>clampwright import-book FOLDER --data FOLDER</p>
    </Section>
  );
}
