import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { type JointState, jointState } from '../job/joint-state.ts';
import { stopCode } from '../job/stop-code.ts';
import { today } from '../job/today.ts';
import { useSay } from '../language/speech.tsx';
import css from '../ui/page.module.css';
import { Banner, Button, Field, LinkButton, Page, Row, Section, Soft } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';
import { HolderLine } from './holder-line.tsx';
import { StorageLine } from './storage-line.tsx';
import { SyncLine } from './sync-line.tsx';

const GROUPS = ['stopped', 'open', 'held', 'done', 'signed'] as const;

/** What is open on this device today, and how the device stands. */
export function TodayScreen() {
  const say = useSay();
  const { world, book } = useJob();
  const { title, site, plans } = book.fold.state('book', 'book');
  const states = book.fold
    .ids('joint')
    .map((id) => jointState(book, id))
    .filter(({ joint }) => joint.plan)
    .sort((a, b) => (a.joint.tag ?? '').localeCompare(b.joint.tag ?? ''));
  const open = book.fold.nonconformances().filter(({ state }) => state !== 'settled').length;
  return (
    <Page title={title ?? say('today.title')}>
      {site === undefined ? null : <Soft>{site}</Soft>}
      <SyncLine world={world} />
      <HolderLine />
      {plans
        .filter(({ withdrawn }) => withdrawn !== undefined)
        .map(({ number, withdrawn }) => (
          <Banner key={number} level="stop">
            {say('today.withdrawn', { number, reason: withdrawn! })}
          </Banner>
        ))}
      {states.length === 0 ? <Banner level="plain">{say('today.no-plan')}</Banner> : <FindJoint states={states} />}
      {GROUPS.map((group) => {
        const own = states.filter(({ where }) => where === group);
        if (own.length === 0 && group !== 'open') return null;
        return (
          <Section key={group} title={say(`today.${group}`)}>
            {own.length === 0 ? <Soft>{say('today.none-open')}</Soft> : <JointList states={own} />}
          </Section>
        );
      })}
      <Valves />
      <RadioStop />
      {open > 0 ? <Banner level="mind">{say('today.findings', { count: open })}</Banner> : null}
      <Tools />
      <Batteries />
      <Row>
        <LinkButton href="/shift">{say('today.handover')}</LinkButton>
        <LinkButton href="/settings">{say('settings.title')}</LinkButton>
      </Row>
      <StorageLine />
      <Soft>{say('app.limits')}</Soft>
    </Page>
  );
}

function JointList({ states }: { readonly states: readonly JointState[] }) {
  const say = useSay();
  return (
    <ul className={css.list}>
      {states.map(({ joint, card, steps, stopped }) => (
        <li key={joint.joint}>
          <Link href={`/joint/${joint.joint}`} className={css.item}>
            <span>
              <strong className={css.serial}>{joint.tag}</strong>
              <small>{card?.title}</small>
            </span>
            <span>
              {/* that a plan is withdrawn stands above all lists */}
              {stopped && stopped.why !== 'withdrawn'
                ? say(`stopped.${stopped.why}`, { number: stopped.number })
                : say('today.joint', { bolts: joint.plan!.slice.bolts, left: steps.reduce((sum, { left }) => Math.max(sum, left), 0) })}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

function Valves() {
  const say = useSay();
  const { book } = useJob();
  const valves = book.joints().flatMap((joint) => {
    const valve = book.valveOf(joint);
    return valve ? [{ id: joint.joint, tag: valve.tag, verdict: valve.plan.verdict }] : [];
  });
  if (valves.length === 0) return null;
  return (
    <Section title={say('today.valves')}>
      <ul className={css.list}>
        {valves.map(({ id, tag, verdict }) => (
          <li key={id}>
            <Link href={`/valve/${id}`} className={css.item}>
              <strong className={css.serial}>{tag}</strong>
              <span>{say('today.valve', { verdict: verdict === 'stop' ? 'stop' : verdict === 'by hand' ? 'hand' : 'tool' })}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}

function FindJoint({ states }: { readonly states: readonly JointState[] }) {
  const say = useSay();
  const [, go] = useLocation();
  const [tag, setTag] = useState('');
  const [wrong, setWrong] = useState<string>();
  const find = () => {
    const found = states.find(({ joint }) => joint.tag?.toLowerCase() === tag.trim().toLowerCase());
    if (found) go(`/joint/${found.joint.joint}`);
    else setWrong(tag.trim());
  };
  return (
    <form
      className={css.section}
      onSubmit={(event) => {
        event.preventDefault();
        find();
      }}
    >
      <LinkButton href="/scan" kind="act">
        {say('today.scan')}
      </LinkButton>
      <Field label={say('today.find')}>
        <input
          value={tag}
          onChange={(event) => setTag(event.target.value)}
          autoCapitalize="characters"
          autoComplete="off"
          spellCheck={false}
          enterKeyHint="go"
        />
      </Field>
      {wrong === undefined ? null : <Banner level="mind">{say('today.not-here', { tag: wrong })}</Banner>}
      {tag.trim() === '' ? null : <Button type="submit">{say('app.confirm')}</Button>}
    </form>
  );
}

function Tools() {
  const say = useSay();
  const { book } = useJob();
  const [, go] = useLocation();
  const [other, setOther] = useState('');
  const tools = book.fold.ids('tool').map((id) => book.fold.state('tool', id));
  if (tools.length === 0) return null;
  return (
    <Section title={say('today.tools')}>
      <ul className={css.list}>
        {tools.map(({ serial, name, due, checks }) => {
          const check = checks.findLast(({ mention }) => mention.on === today());
          const expired = due !== undefined && due < today();
          return (
            <li key={serial}>
              <Link href={`/tool/${encodeURIComponent(serial)}`} className={css.item}>
                <span>
                  <strong className={css.serial}>{serial}</strong>
                  <small>{name}</small>
                </span>
                <span>
                  {say(check === undefined ? 'today.tool-unchecked' : check.passed ? 'today.tool-checked' : 'today.tool-failed')}
                  {due === undefined ? null : <small>{say(expired ? 'today.tool-expired' : 'today.tool-due', { due })}</small>}
                </span>
              </Link>
            </li>
          );
        })}
      </ul>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          go(`/tool/${encodeURIComponent(other.trim())}`);
        }}
      >
        <Field label={say('today.other-tool')}>
          <input value={other} onChange={(event) => setOther(event.target.value)} autoCapitalize="characters" autoComplete="off" />
        </Field>
        {other.trim() === '' ? null : <Button type="submit">{say('joint.tool-check', { tool: other.trim() })}</Button>}
      </form>
    </Section>
  );
}

function Batteries() {
  const say = useSay();
  const { book } = useJob();
  const batteries = book.fold.ids('battery').map((id) => book.fold.state('battery', id));
  if (batteries.length === 0) return null;
  return (
    <Section title={say('today.batteries')}>
      <ul className={css.list}>
        {batteries.map(({ battery, boltsSinceChange, readings }) => {
          const last = readings.at(-1);
          return (
            <li key={battery} className={css.item}>
              <strong className={css.serial}>{battery}</strong>
              <span>
                {say('today.battery', { pulls: boltsSinceChange })}
                {last ? <small>{say('today.gauge', { bars: last.bars, of: last.of })}</small> : null}
              </span>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}

/** A stop called over the radio: the code of the plan, typed in, stops this device at the next bolt, network or not. */
function RadioStop() {
  const say = useSay();
  const { world, book } = useJob();
  const [code, setCode] = useState('');
  const plans = book.fold.state('book', 'book').plans.filter(({ withdrawn }) => withdrawn === undefined);
  if (plans.length === 0) return null;
  const meant = plans.find(({ hash }) => stopCode(hash) === code);
  return (
    <details>
      <summary className={css.item}>{say('today.stop-code')}</summary>
      <div className={css.opened}>
        <Field label={say('enrol.code')}>
          <input
            value={code}
            onChange={(event) => setCode(event.target.value.trim())}
            inputMode="numeric"
            maxLength={4}
            autoComplete="off"
          />
        </Field>
        {code.length === 4 && !meant ? <Banner level="mind">{say('today.stop-code-wrong')}</Banner> : null}
        <Button
          kind="stop"
          disabled={!meant}
          onClick={() => void book.record('plan-withdrawn', { number: meant!.number, reason: say('today.stop-code') }, world.holder)}
        >
          STOP {meant?.number}
        </Button>
      </div>
    </details>
  );
}
