import { useMemo } from 'react';
import { Link } from 'wouter';
import { type JointMissing, type Missing, missingByJoint } from '../../../job/missing.ts';
import { useWatched, watched } from '../../../job/store.ts';
import { stretches } from '../../../job/stretches.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice, useTrade } from '../../../language/speech.tsx';
import { Banner, LinkButton, Section, Soft } from '../../../ui/page.tsx';
import { ChooseJob } from '../job/choose-job.tsx';
import { Gate } from '../job/gate.tsx';
import { useSession } from '../job/session.ts';
import { type ReadBook, useLive, useReadBook } from '../job/use-read-book.ts';
import own from './handover.module.css';
import { HandoverFile } from './handover-file.tsx';
import { Retightening } from './retightening.tsx';

/** What a job lacks before it is handed over, the file itself, and what falls due afterwards. */
export function HandoverPage() {
  const { session } = useSession();
  const read = useReadBook(session.kind === 'in');
  return (
    <Gate page="handover" has={read.world ? 'device' : 'session'}>
      <ChooseJob read={read} />
      {read.book ? <Handover read={read} /> : null}
    </Gate>
  );
}

function Handover({ read }: { readonly read: ReadBook }) {
  const say = useOffice();
  useLive(read);
  const book = read.book!;
  const version = book.version.get();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the fold is asked again when it has grown
  const joints = useMemo(() => missingByJoint(book), [book, version]);
  const waiting = useWatched(read.world?.waiting ?? NONE);
  const complete = joints.filter(({ missing }) => missing.length === 0);
  const lacking = joints.filter(({ missing }) => missing.length > 0);
  const { found } = book.fold.state('book', 'book');
  const open = book.fold.nonconformances().filter(({ joint, state }) => joint === undefined && state !== 'settled').length;
  return (
    <>
      <Section title={say('over.complete')}>
        {joints.length === 0 ? <Soft>{say('today.no-plan')}</Soft> : null}
        {joints.length > 0 && lacking.length === 0 && open === 0 && found.length === 0 ? (
          <Banner level="fine">{say('over.all-there')}</Banner>
        ) : null}
        {lacking.length > 0 ? <p>{say('over.count', { complete: complete.length, joints: joints.length })}</p> : null}
        {waiting > 0 ? <Banner level="mind">{say('over.waiting', { count: waiting })}</Banner> : null}
        {open > 0 ? (
          <Banner level="mind">
            <p>{say('over.open-book', { count: open })}</p>
            <LinkButton href="/office/watch">{say('office.page-watch')}</LinkButton>
          </Banner>
        ) : null}
        <ul className={own.joints}>
          {lacking.map((one) => (
            <Lacking key={one.joint} joint={one} linked={read.world !== undefined} />
          ))}
        </ul>
        {complete.length > 0 && lacking.length > 0 ? (
          <Soft>{say('over.complete-ones', { tags: complete.map(({ tag }) => tag).join(', ') })}</Soft>
        ) : null}
      </Section>
      <HandoverFile read={read} />
      <Retightening book={book} />
      <Section title={say('over.verify')}>
        <Soft>{say('over.verify-text')}</Soft>
        <LinkButton href="/verify">{say('enrol.verify')}</LinkButton>
      </Section>
    </>
  );
}
const NONE = watched(0);

function Lacking({ joint: { joint, tag, missing }, linked }: { readonly joint: JointMissing; readonly linked: boolean }) {
  const text = useMissing();
  return (
    <li>
      <h3>{linked ? <Link href={`/joint/${joint}`}>{tag}</Link> : tag}</h3>
      <ul>
        {missing.map((one) => (
          <li key={text(one)}>{text(one)}</li>
        ))}
      </ul>
    </li>
  );
}

function useMissing(): (one: Missing) => string {
  const say = useOffice();
  const trade = useTrade();
  const { says } = useNotice();
  return (one) => {
    switch (one.what) {
      case 'bolts':
        return say('over.lacks-bolts', { step: trade.step(one.step), count: one.bolts.length, bolts: stretches(one.bolts) });
      case 'loosened':
        return say('over.lacks-loosened', { bolts: stretches(one.bolts) });
      case 'inspection':
        return say('over.lacks-inspection', { done: one.done, wanted: one.wanted });
      case 'nonconformance':
        return say('over.lacks-settling', { count: one.count });
      case 'hold':
        return says(one.notice);
      case 'stopped':
        return say(`stopped.${one.stopped.why}`, { number: one.stopped.number });
      default:
        return say(`over.lacks-${one.what}`);
    }
  };
}
