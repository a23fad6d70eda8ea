import { memo } from 'react';
import { Link } from 'wouter';
import type { JointState } from '../../../job/joint-state.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useTrade } from '../../../language/speech.tsx';
import { boltPlaces } from '../../joint/bolt-places.ts';
import { boltShares } from './bolt-share.ts';
import own from './watch.module.css';

interface RingProps {
  readonly state: JointState;
  /** open nonconformances of the joint */
  readonly open: number;
  /** says when something of it is new: the drawing is made again then, and only then */
  readonly news: string;
  /** the crew's page of the joint, where this browser has it */
  readonly linked: boolean;
}

/** One joint: its bolts where they are, each filled as far as its steps are done, and what is open of the step it is in. */
export const Ring = memo(
  function Ring({ state, open, linked }: RingProps) {
    const say = useOffice();
    const trade = useTrade();
    const { joint, current, steps, where, stopped } = state;
    const all = steps.length * joint.plan!.slice.bolts;
    const left = steps.reduce((sum, one) => sum + one.left, 0);
    const tag = joint.tag ?? joint.joint;
    return (
      <li className={own.ring} data-where={where}>
        <h3>{linked ? <Link href={`/joint/${joint.joint}`}>{tag}</Link> : tag}</h3>
        <Drawing state={state} label={say('live.ring', { tag, done: all - left, all })} />
        <p>
          {stopped
            ? say(`stopped.${stopped.why}`, { number: stopped.number })
            : current
              ? say('live.step', {
                  step: trade.step(current.step),
                  done: joint.plan!.slice.bolts - current.left,
                  bolts: joint.plan!.slice.bolts,
                })
              : say(`today.${where}`)}
        </p>
        <progress value={all - left} max={Math.max(1, all)} aria-label={say('live.ring', { tag, done: all - left, all })} />
        {open > 0 ? <strong>{say('live.open-of', { count: open })}</strong> : null}
      </li>
    );
  },
  (a, b) => a.news === b.news && a.linked === b.linked,
);

const disc = (x: number, y: number, r: number) =>
  `M${(x - r).toFixed(1)} ${y.toFixed(1)}a${r.toFixed(1)} ${r.toFixed(1)} 0 1 0 ${(2 * r).toFixed(1)} 0a${r.toFixed(1)} ${r.toFixed(1)} 0 1 0 ${(-2 * r).toFixed(1)} 0`;

/** All bolts in three paths: a board of many joints stays light. */
function Drawing({ state, label }: { readonly state: JointState; readonly label: string }) {
  const { card } = state;
  if (!card) return null;
  const places = boltPlaces(card, 0);
  const shares = boltShares(state);
  const of = (wanted: (share: number, trouble: boolean) => number) =>
    places
      .map(({ x, y, size }, at) => {
        const { share, trouble } = shares[at] ?? { share: 0, trouble: false };
        const r = wanted(share, trouble) * size;
        return r > 0 ? disc(x, y, r) : '';
      })
      .join('');
  return (
    <svg viewBox="-116 -116 232 232" role="img" aria-label={label}>
      {card.layout.kind === 'ring' ? <circle r="100" className={own.flange} /> : null}
      <path d={of(() => 1)} className={own.outline} strokeWidth={Math.min(1.6, 0.22 * (places[0]?.size ?? 1))} />
      {/* the area that is filled is the share of the steps */}
      <path d={of((share) => Math.sqrt(share))} className={own.filled} />
      <path d={of((_, trouble) => (trouble ? 1.45 : 0))} className={own.trouble} />
    </svg>
  );
}
