import { ROLES } from '@clampwright/record';
import type { Answered } from '@clampwright/sync';
import { useCallback, useEffect, useState } from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import css from '../../../ui/page.module.css';
import { Banner, Button, Check, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { FaultLine } from '../job/fault-line.tsx';
import { type Fault, faultOf, server } from '../job/session.ts';

type Role = (typeof ROLES)[number];
type Jobs = Answered<'books'>['books'];

/** Who may sign in, in which roles and for which jobs. */
export function Accounts({ own }: { readonly own: string }) {
  const say = useOffice();
  const [accounts, setAccounts] = useState<Answered<'accounts'>['accounts']>([]);
  const [jobs, setJobs] = useState<Jobs>([]);
  const [fault, setFault] = useState<Fault>();
  const [sure, setSure] = useState<string>();
  const ask = useCallback(async () => {
    const [known, books] = await Promise.all([server('accounts', {}), server('books', {})]);
    if (known.kind === 'answered') setAccounts(known.value.accounts);
    else setFault(faultOf(known));
    if (books.kind === 'answered') setJobs(books.value.books.filter(({ job }) => job.startsWith('j-')));
  }, []);
  useEffect(() => void ask(), [ask]);
  const remove = async (name: string) => {
    if (sure !== name) return setSure(name);
    setFault(faultOf(await server('removeAccount', { params: { name } })));
    setSure(undefined);
    return ask();
  };
  const title = (job: string) => jobs.find((one) => one.job === job)?.title ?? job;
  return (
    <Section title={say('set.accounts')}>
      <Soft>{say('set.accounts-text')}</Soft>
      <ul className={css.list}>
        {accounts.map(({ name, roles, books, shared }) => (
          <li key={name} className={css.item}>
            <span>
              <b>{name}</b>
              <small>
                {roles.map((role) => say(`office.role-${role}`)).join(', ')} ·{' '}
                {books === 'all' ? say('set.all-jobs') : books.map(title).join(', ') || say('set.no-jobs')}
                {shared ? ` · ${say('set.shared')}` : ''}
              </small>
            </span>
            {name === own ? null : (
              <Button kind="stop" onClick={() => void remove(name)}>
                {say(sure === name ? 'set.remove-sure' : 'set.remove-account', { name })}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <FaultLine fault={fault} />
      <NewAccount jobs={jobs} onAdded={() => void ask()} />
    </Section>
  );
}

function NewAccount({ jobs, onAdded }: { readonly jobs: Jobs; readonly onAdded: () => void }) {
  const say = useOffice();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const [roles, setRoles] = useState<readonly Role[]>([]);
  const [books, setBooks] = useState<readonly string[]>([]);
  const [all, setAll] = useState(false);
  const [shared, setShared] = useState(false);
  const [fault, setFault] = useState<Fault>();
  const [added, setAdded] = useState<string>();
  const flip = <T,>(list: readonly T[], one: T) => (list.includes(one) ? list.filter((other) => other !== one) : [...list, one]);
  const add = async () => {
    const answer = await server('addAccount', {
      body: { name: name.trim(), password, roles: [...roles], books: all ? 'all' : [...books], shared },
    });
    setFault(faultOf(answer));
    if (answer.kind !== 'answered') return;
    setAdded(answer.value.name);
    setName('');
    setPassword('');
    setRoles([]);
    onAdded();
  };
  return (
    <details>
      <summary>{say('set.new-account')}</summary>
      <form
        className={css.section}
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        <Row>
          <Field label={say('set.account-name')}>
            <input value={name} onChange={(event) => setName(event.target.value)} autoComplete="off" />
          </Field>
          <Field label={say('set.account-password')}>
            <input
              type="password"
              value={password}
              onChange={(event) => setPassword(event.target.value)}
              autoComplete="new-password"
              minLength={10}
            />
          </Field>
        </Row>
        <fieldset>
          <legend>{say('office.role')}</legend>
          {ROLES.map((role) => (
            <Check
              key={role}
              label={`${say(`office.role-${role}`)}: ${say(`set.may-${role}`)}`}
              checked={roles.includes(role)}
              onChange={() => setRoles(flip(roles, role))}
            />
          ))}
        </fieldset>
        <fieldset>
          <legend>{say('office.jobs')}</legend>
          <Check label={say('set.all-jobs')} checked={all} onChange={setAll} />
          {all
            ? null
            : jobs.map(({ job, title }) => (
                <Check key={job} label={title} checked={books.includes(job)} onChange={() => setBooks(flip(books, job))} />
              ))}
        </fieldset>
        <Check label={say('set.shared-text')} checked={shared} onChange={setShared} />
        <FaultLine fault={fault} />
        {added === undefined ? null : <Banner level="fine">{say('set.account-added', { name: added })}</Banner>}
        <Button kind="act" type="submit" disabled={name.trim() === '' || password.length < 10 || roles.length === 0}>
          {say('set.add-account')}
        </Button>
      </form>
    </details>
  );
}
