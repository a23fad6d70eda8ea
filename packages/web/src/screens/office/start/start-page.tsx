import { yamlOf, zipFolder } from '@clampwright/papers/edit';
import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { clearDesk, desk, putOnDesk } from '../../../draft/desk.ts';
import type { Draft, DraftHead, Files } from '../../../draft/draft.ts';
import { draftHeads, forgetDraft, readDraft } from '../../../draft/draft-shelf.ts';
import { demoDraft, draftOf, emptyDraft } from '../../../draft/new-draft.ts';
import { chosen, dropped, type Taken, takeFiles } from '../../../draft/take-files.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import css from '../../../ui/page.module.css';
import { Banner, Button, FileButton, LinkButton, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { Jobs } from '../job/jobs.tsx';
import { useSession } from '../job/session.ts';
import { DropZone } from '../shell/drop-zone.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { incoming } from './incoming.ts';
import own from './start-page.module.css';

/** Where one begins: a list, a folder, the demo, or what one had begun. */
export function StartPage({ onEnrolled }: { readonly onEnrolled: () => void }) {
  const say = useOffice();
  const trade = useTrade();
  const [, goTo] = useLocation();
  const here = useWatched(desk);
  const [heads, setHeads] = useState<readonly DraftHead[]>([]);
  const [fault, setFault] = useState<string>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another draft in hand is another list
  useEffect(() => void draftHeads().then(setHeads), [here?.draft.id]);
  const open = async (draft: Draft | undefined, page = '/office/plan') => {
    if (!draft) return;
    await putOnDesk(draft);
    goTo(page);
  };
  const take = async (taken: Taken | undefined) => {
    setFault(undefined);
    if (!taken || taken.kind === 'other') return setFault(say('desk.not-understood'));
    if (taken.kind === 'unreadable') return setFault(say('desk.unreadable', { file: taken.name }));
    if (taken.kind === 'too large') return setFault(say('desk.too-large', { file: taken.name }));
    if (taken.kind === 'folder') return open(draftOf(taken.name || titleOf(taken.files) || say('desk.unnamed'), taken.files));
    incoming.set({ ...taken, into: undefined });
    return goTo('/office/list');
  };
  const choose = (files: readonly File[]) => void takeFiles(chosen(files)).then(take);
  return (
    <OfficeShell title={say('office.page-start')}>
      <DropZone className={own.drop} onDropped={(data) => void dropped(data).then(takeFiles).then(take)}>
        <h2>{say('desk.begin')}</h2>
        <p>{say('desk.begin-text')}</p>
        <div className={own.ways}>
          <FileButton kind="act" label={say('desk.choose')} multiple onChosen={choose} />
          <FileButton label={say('desk.choose-folder')} folder onChosen={choose} />
          <Button onClick={() => void open(emptyDraft(say('desk.unnamed'), say('desk.site-unnamed')), '/office/define')}>
            {say('desk.empty')}
          </Button>
          <Button onClick={() => void demoDraft().then((draft) => open(draft))}>{say('desk.open-demo')}</Button>
        </div>
        {fault === undefined ? null : <Banner level="mind">{fault}</Banner>}
      </DropZone>
      <Section title={say('desk.drafts')}>
        {heads.length === 0 ? <Soft>{say('desk.no-drafts')}</Soft> : null}
        <ul className={css.list}>
          {heads.map((head) => (
            <li key={head.id} className={own.draft}>
              <span>
                <strong>{head.name}</strong> {head.demo ? <em className={own.demo}>{say('desk.demo')}</em> : null}
                <small>{say('desk.changed', { time: trade.moment(head.changed) })}</small>
              </span>
              <span className={own.does}>
                {here?.draft.id === head.id ? (
                  <LinkButton href="/office/plan" kind="act">
                    {say('desk.go-on')}
                  </LinkButton>
                ) : (
                  <Button
                    onClick={() => void readDraft(head.id).then((draft) => open(draft))}
                    aria-label={`${say('desk.go-on')}: ${head.name}`}
                  >
                    {say('desk.go-on')}
                  </Button>
                )}
                <Button
                  kind="quiet"
                  aria-label={`${say('desk.zip')}: ${head.name}`}
                  onClick={() =>
                    void readDraft(head.id).then((draft) => {
                      if (draft) save(`${head.name}.zip`, zipFolder(draft.files));
                    })
                  }
                >
                  {say('desk.zip')}
                </Button>
                <Forget head={head} onForgotten={() => void draftHeads().then(setHeads)} />
              </span>
            </li>
          ))}
        </ul>
      </Section>
      <YardJobs onEnrolled={onEnrolled} />
    </OfficeShell>
  );
}

/** What a job calls itself. */
function titleOf(files: Files): string {
  const { title } = (yamlOf(files.get('job.yaml') ?? new Uint8Array()) ?? {}) as { readonly title?: string };
  return title ?? '';
}

/** Twice, since nothing brings it back. */
function Forget({ head, onForgotten }: { readonly head: DraftHead; readonly onForgotten: () => void }) {
  const say = useOffice();
  const [asked, setAsked] = useState(false);
  const forget = async () => {
    if (desk.get()?.draft.id === head.id) await clearDesk();
    await forgetDraft(head.id);
    onForgotten();
  };
  return asked ? (
    <Button kind="stop" onClick={() => void forget()}>
      {say('desk.forget-sure', { name: head.name })}
    </Button>
  ) : (
    <Button kind="quiet" aria-label={`${say('desk.forget')}: ${head.name}`} onClick={() => setAsked(true)}>
      {say('desk.forget')}
    </Button>
  );
}

/** Jobs of the yard, for whoever is signed in; planning needs none of them. */
function YardJobs({ onEnrolled }: { readonly onEnrolled: () => void }) {
  const say = useOffice();
  const { session } = useSession();
  return session.kind === 'in' ? (
    <Jobs onEnrolled={onEnrolled} />
  ) : (
    <Section title={say('office.jobs')}>
      <Soft>
        {say('office.jobs-signed-out')} <Link href="/office/settings">{say('office.sign-in')}</Link>
      </Soft>
    </Section>
  );
}
