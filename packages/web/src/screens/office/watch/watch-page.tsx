import type { Nonconformance } from '@clampwright/record';
import { useEffect, useMemo } from 'react';
import { jointState } from '../../../job/joint-state.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Section, Soft } from '../../../ui/page.tsx';
import { ChooseJob } from '../job/choose-job.tsx';
import { Gate } from '../job/gate.tsx';
import { useSession } from '../job/session.ts';
import { Settle } from '../job/settle.tsx';
import { type ReadBook, useLive, useReadBook } from '../job/use-read-book.ts';
import { Forecast } from './forecast.tsx';
import { Late } from './late.tsx';
import { Ring } from './ring.tsx';
import own from './watch.module.css';

/** The board of a job: it moves as crews work. */
export function WatchPage() {
  const { session } = useSession();
  const read = useReadBook(session.kind === 'in');
  return (
    <Gate page="watch" wide has={read.world ? 'device' : 'session'}>
      <ChooseJob read={read} />
      {read.book ? <Board read={read} /> : null}
    </Gate>
  );
}

function Board({ read }: { readonly read: ReadBook }) {
  const say = useOffice();
  const live = useLive(read);
  const { world } = read;
  const book = read.book!;
  const version = book.version.get();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the fold is asked again when it has grown
  const board = useMemo(() => {
    const states = book.fold
      .ids('joint')
      .map((id) => jointState(book, id))
      .filter(({ joint }) => joint.plan)
      .sort((a, b) => (a.joint.tag ?? '').localeCompare(b.joint.tag ?? '', undefined, { numeric: true }));
    const all = book.fold.nonconformances().filter(({ state }) => state !== 'settled');
    const openOf = new Map<string | undefined, number>();
    for (const { joint } of all) openOf.set(joint, (openOf.get(joint) ?? 0) + 1);
    return { states, openOf, open: all };
  }, [book, version]);
  useEffect(() => {
    measured(version);
  }, [version]);
  const { states, openOf, open } = board;
  const { title } = book.fold.state('book', 'book');
  // what a plan has taken off is no work that is left
  const sums = states
    .filter(({ where }) => where !== 'stopped')
    .reduce(
      (sum, { steps, joint, where }) => {
        const left = steps.reduce((all, one) => all + one.left, 0);
        return {
          done: sum.done + steps.length * joint.plan!.slice.bolts - left,
          left: sum.left + left,
          joints: sum.joints + (where === 'done' || where === 'signed' ? 1 : 0),
        };
      },
      { done: 0, left: 0, joints: 0 },
    );
  return (
    <>
      <p className={own.sums} role="status">
        {title === undefined ? null : <b>{title}</b>}
        <span>{say('live.sums', { done: sums.done, all: sums.done + sums.left, joints: sums.joints, of: states.length })}</span>
        <span data-live={live}>{say(`live.is-${live}`)}</span>
      </p>
      <Forecast book={book} left={sums.left} version={version} />
      <Section title={say('live.joints')}>
        {states.length === 0 ? <Soft>{say('today.no-plan')}</Soft> : <Soft>{say('live.key')}</Soft>}
        <ul className={own.rings}>
          {states.map((state) => {
            const count = openOf.get(state.joint.joint) ?? 0;
            const news = `${state.joint.history.length} ${state.where} ${count} ${state.card === undefined}`;
            return <Ring key={state.joint.joint} state={state} open={count} news={news} linked={world !== undefined} />;
          })}
        </ul>
      </Section>
      {world ? <Settle /> : <OpenPoints open={open} tagOf={(joint) => book.fold.state('joint', joint).tag ?? joint} />}
      <Late book={book} />
      <BatteryLines read={read} />
    </>
  );
}

/** From the news of an entry to the picture of it: a measure in the browser’s own timeline. */
function measured(version: number): void {
  requestAnimationFrame(() => {
    if (performance.getEntriesByName('clampwright news').length === 0) return;
    performance.measure('clampwright board', { start: 'clampwright news', detail: version });
    performance.clearMarks('clampwright news');
  });
}

interface OpenProps {
  readonly open: readonly Nonconformance[];
  readonly tagOf: (joint: string) => string;
}

/** What is open, for whoever only reads. */
function OpenPoints({ open, tagOf }: OpenProps) {
  const say = useOffice();
  const { says } = useNotice();
  return (
    <Section title={say('office.settle')}>
      {open.length === 0 ? <Soft>{say('office.settle-none')}</Soft> : null}
      <ul className={own.lines}>
        {open.slice(0, 60).map(({ id, joint, notice, text, state }) => (
          <li key={id}>
            {joint === undefined ? '' : `${tagOf(joint)}: `}
            {notice ? says(notice) : text} ({say(`office.state-${state}`)})
          </li>
        ))}
      </ul>
    </Section>
  );
}

function BatteryLines({ read }: { readonly read: ReadBook }) {
  const say = useOffice();
  const { fold } = read.book!;
  const batteries = fold.ids('battery').map((id) => fold.state('battery', id));
  if (batteries.length === 0) return null;
  return (
    <Section title={say('store.batteries')}>
      <ul className={own.lines}>
        {batteries.map(({ battery, inTool, boltsSinceChange, readings }) => {
          const last = readings.at(-1);
          return (
            <li key={battery}>
              <strong>{battery}</strong> {inTool === undefined ? '' : say('store.in-tool', { tool: inTool })}{' '}
              {say('today.battery', { pulls: boltsSinceChange })} {last ? say('today.gauge', { bars: last.bars, of: last.of }) : ''}
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
