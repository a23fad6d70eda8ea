import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { desk } from '../../../draft/desk.ts';
import { attachmentOf } from '../../../job/attachment-of.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import type { Departure } from '../../../planning/departures.ts';
import { engine, planning } from '../../../planning/planning.ts';
import type { JointChange, PlanView } from '../../../planning/view.ts';
import { Banner, Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { useBook, useWorld } from '../../../ui/world-context.ts';
import { Changes } from '../compare/changes.tsx';
import { NoDraft } from '../shell/no-draft.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import css from './issue.module.css';
import { issueInto } from './issue-plan.ts';
import { IssuedPlans } from './issued-plans.tsx';

/** From a draft to an issued plan: looked over, approved where it departs from custom, frozen with number and hash. */
export function IssuePage() {
  const say = useOffice();
  const here = useWatched(desk);
  const { view } = useWatched(planning);
  const world = useWorld();
  const book = useBook();
  if (!here)
    return world && book ? (
      <OfficeShell title={say('office.page-issue')}>
        <Soft>{say('desk.none-text')}</Soft>
        <IssuedPlans />
      </OfficeShell>
    ) : (
      <NoDraft title={say('office.page-issue')} />
    );
  return (
    <OfficeShell title={say('office.page-issue')}>
      {view ? <Review view={view} /> : <Soft>{say('desk.planning')}</Soft>}
      {here.draft.demo ? (
        <Banner level="mind">{say('issue.demo')}</Banner>
      ) : !world || !book || world.holder === undefined || world.world === 'practice' ? (
        <Before />
      ) : view?.sums && view.sums.joints > view.sums.stop - view.waiting ? (
        <Freeze key={`${book.job} ${here.draft.id}`} view={view} />
      ) : (
        <Banner level="mind">{say('issue.nothing')}</Banner>
      )}
      {world && book ? <IssuedPlans /> : null}
    </OfficeShell>
  );
}

/** What a planner looks over before issuing; each with the way to it. */
function Review({ view }: { readonly view: PlanView }) {
  const say = useOffice();
  const { sums, notices, roundsOpen, waiting } = view;
  const stops = (sums?.stop ?? 0) - waiting;
  const items = [
    { fine: notices.length === 0, text: say('issue.read', { count: notices.length }), href: '/office/define' },
    { fine: stops === 0, text: say('issue.stops', { count: stops }), href: '/office/plan?verdict=stop' },
    { fine: waiting === 0, text: say('issue.holds', { count: waiting }), href: '/office/plan?verdict=stop' },
    {
      fine: (sums?.attention ?? 0) === 0,
      text: say('issue.attention', { count: sums?.attention ?? 0 }),
      href: '/office/plan?verdict=attention',
    },
    { fine: roundsOpen === 0, text: say('issue.rounds', { count: roundsOpen }), href: '/office/plan' },
  ];
  return (
    <Section title={say('issue.review')}>
      <ul className={css.review}>
        {items.map(({ fine, text, href }) => (
          <li key={text} data-fine={fine ? '' : undefined}>
            <span aria-hidden="true">{fine ? '✓' : '▲'}</span>
            <Link href={href}>{text}</Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}

/** What it takes to issue: a job of the yard on this browser, and a planner who is named. */
function Before() {
  const say = useOffice();
  const world = useWorld();
  const book = useBook();
  const steps = [
    { done: world !== undefined && book !== undefined, text: say('issue.need-job'), href: '/office' },
    { done: world?.holder !== undefined, text: say('issue.need-planner'), href: '/office/people' },
  ];
  return (
    <Section title={say('issue.before')}>
      <Soft>{say('issue.before-text')}</Soft>
      <ol className={css.review}>
        {steps.map(({ done, text, href }) => (
          <li key={text} data-fine={done ? '' : undefined}>
            <span aria-hidden="true">{done ? '✓' : '○'}</span>
            <Link href={href}>{text}</Link>
          </li>
        ))}
      </ol>
    </Section>
  );
}

function Freeze({ view }: { readonly view: PlanView }) {
  const say = useOffice();
  const world = useWorld()!;
  const book = useBook()!;
  const here = useWatched(desk)!;
  const { plans, title } = book.fold.state('book', 'book');
  const last = plans.findLast(({ withdrawn }) => withdrawn === undefined);
  const [number, setNumber] = useState(`P-${plans.length + 1}`);
  const [earlier, setEarlier] = useState<'continue' | 'stop'>('continue');
  const [departures, setDepartures] = useState<readonly Departure[]>();
  const [names, setNames] = useState<Readonly<Record<string, string>>>({});
  const [changes, setChanges] = useState<readonly JointChange[]>();
  const [state, setState] = useState<'open' | 'issuing' | { readonly number: string; readonly hash: string }>('open');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another view is another plan
  useEffect(() => {
    let asked = true;
    void engine.departures().then((found) => {
      if (asked) setDepartures(found);
    });
    if (last)
      void attachmentOf(world, book, last.hash).then(async (bytes) => {
        const found = bytes && (await engine.compare(bytes));
        if (asked) setChanges(found);
      });
    return () => {
      asked = false;
    };
  }, [view, last?.hash]);
  const wanted = number.trim();
  const taken = plans.some((one) => one.number === wanted);
  const unnamed = departures?.some(({ kind }) => (names[kind] ?? '').trim() === '') ?? true;
  const issue = async () => {
    setState('issuing');
    const whole = await engine.whole();
    if (!whole) return setState('open');
    const hash = await issueInto(world, book, whole, {
      number: wanted,
      earlier: plans.length === 0 ? undefined : earlier,
      approvals: departures!.map(({ kind, tags }) => ({ text: say(`issue.departure-${kind}`), tags, authority: names[kind]!.trim() })),
      files: here.draft.files,
      by: world.holder,
    });
    setState({ number: wanted, hash });
    setNumber(`P-${plans.length + 2}`);
    void world.send();
    return undefined;
  };
  return (
    <>
      {last && changes ? (
        <Section title={say('issue.since', { number: last.number })}>
          {changes.length === 0 ? <Soft>{say('issue.unchanged')}</Soft> : null}
          <Changes changes={changes} />
        </Section>
      ) : null}
      {departures && departures.length > 0 ? (
        <Section title={say('issue.approvals')}>
          <Soft>{say('issue.approvals-text')}</Soft>
          {departures.map(({ kind, tags }) => (
            <div key={kind} className={css.approval}>
              <p>
                <strong>{say(`issue.departure-${kind}`)}</strong>
              </p>
              <p>{tags.join(', ')}</p>
              <Field label={say('issue.approved-by')}>
                <input
                  value={names[kind] ?? ''}
                  autoComplete="off"
                  onChange={(event) => setNames({ ...names, [kind]: event.target.value })}
                />
              </Field>
            </div>
          ))}
        </Section>
      ) : null}
      <Section title={say('issue.freeze')}>
        <p>{say('issue.into', { job: title ?? book.job, name: book.nameOf(world.holder!) ?? '' })}</p>
        <Row>
          <Field label={say('office.plan-number')}>
            <input value={number} onChange={(event) => setNumber(event.target.value)} />
          </Field>
          {plans.length === 0 ? null : (
            <Field label={say('office.plan-earlier')}>
              <select value={earlier} onChange={(event) => setEarlier(event.target.value as typeof earlier)}>
                <option value="continue">{say('office.plan-continue')}</option>
                <option value="stop">{say('office.plan-stop')}</option>
              </select>
            </Field>
          )}
          <Button kind="act" disabled={wanted === '' || taken || unnamed || state === 'issuing'} onClick={() => void issue()}>
            {say('office.issue')}
          </Button>
        </Row>
        {taken ? <Soft>{say('issue.taken', { number: wanted })}</Soft> : null}
        {(view.sums?.stop ?? 0) > 0 ? <Soft>{say('office.plan-stopped')}</Soft> : null}
        {typeof state === 'object' ? (
          <Banner level="fine">
            <p>{say('issue.done', { number: state.number })}</p>
            <p className={css.hash}>{state.hash}</p>
            <Link href="/office/papers">{say('issue.print')}</Link>
          </Banner>
        ) : null}
      </Section>
    </>
  );
}
