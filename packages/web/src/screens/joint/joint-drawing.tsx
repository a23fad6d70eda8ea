import { useState } from 'react';
import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay } from '../../language/speech.tsx';
import { Button } from '../../ui/page.tsx';
import { boltPlaces } from './bolt-places.ts';
import css from './joint-drawing.module.css';

interface JointDrawingProps {
  readonly state: OpenJoint;
  /** bolts to be taken now */
  readonly now?: readonly number[];
  readonly turnable?: boolean;
}

/** The bolts where they are, seen as the datum says, turned to where the operator stands: done, to be done, now. */
export function JointDrawing({ state, now = [], turnable = false }: JointDrawingProps) {
  const say = useSay();
  const [turn, setTurn] = useState(0);
  const { joint, card, current, steps } = state;
  const places = boltPlaces(card, turn);
  const step = current?.step ?? steps.at(-1)?.step;
  const open = new Set(current?.open.flat());
  const few = places.length <= 40;
  // a ring fills a square, a splice only a stripe of it
  const half = card.layout.kind === 'ring' ? 112 : Math.max(...places.map(({ y, size }) => Math.abs(y) + 2 * size));
  return (
    <figure className={css.figure}>
      <svg viewBox={`-112 ${-half} 224 ${2 * half}`} role="img" aria-label={say('tighten.bolts', { bolts: now.join(', ') || '–' })}>
        {card.layout.kind === 'ring' ? <circle r="100" className={css.ring} /> : null}
        {places.map(({ bolt, x, y, size }) => {
          const isNow = now.includes(bolt);
          const done = step !== undefined && !open.has(bolt) && (joint.bolts.get(bolt)?.steps[step]?.length ?? 0) > 0;
          const r = isNow ? size * 1.5 : size;
          return (
            <g key={bolt} transform={`translate(${x} ${y})`} className={isNow ? css.now : done ? css.done : css.open}>
              <polygon points={hexagon(r)} />
              {isNow || few || bolt === 1 || bolt % 5 === 0 ? (
                <text dy="0.36em" fontSize={isNow ? r * 0.95 : r * 0.8}>
                  {bolt}
                </text>
              ) : null}
            </g>
          );
        })}
      </svg>
      {turnable ? (
        <Button kind="quiet" onClick={() => setTurn((turn + 1) % 4)}>
          {say('tighten.turn')}
        </Button>
      ) : null}
    </figure>
  );
}

const hexagon = (r: number): string =>
  Array.from(
    { length: 6 },
    (_, i) => `${(r * Math.cos((Math.PI / 3) * i)).toFixed(2)},${(r * Math.sin((Math.PI / 3) * i)).toFixed(2)}`,
  ).join(' ');
