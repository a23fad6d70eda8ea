import { useState } from 'react';
import type { OpenJoint } from '../../job/open-joint.ts';
import { readNumber } from '../../language/read-number.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import { Button, Field, Row, Section, Soft } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

const POINTS = 8;

/** Gaps between the faces of a flange at eight points, or at every bolt where there are fewer; all of them, so that none is forgotten. */
export function Gaps({ state: { joint, card, current } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const [read, setRead] = useState<ReadonlyMap<number, string>>(new Map());
  if (!card.cautions.includes('gap-after-each-pass')) return null;
  const count = Math.min(POINTS, card.boltCount);
  const points = Array.from({ length: count }, (_, i) => 1 + Math.round((i * card.boltCount) / count));
  const gaps = points.map((position) => ({ position, gap: readNumber(read.get(position) ?? '') }));
  const record = async () => {
    await book.record(
      'gap-read',
      {
        joint: joint.joint,
        ...(current ? { after: current.step } : {}),
        gaps: gaps.map(({ position, gap }) => ({ position, gapMicrometre: Math.round(gap! * 1000) })),
      },
      world.holder,
    );
    setRead(new Map());
  };
  const last = joint.gaps.slice(-count);
  return (
    <Section title={say('joint.gaps')}>
      {last.length > 0 ? (
        <Soft>{last.map(({ at, gapMicrometre }) => `${at}: ${trade.figure(gapMicrometre / 1000, 2)} mm`).join(' · ')}</Soft>
      ) : null}
      <Row short>
        {points.map((position) => (
          <Field key={position} label={`${say('tighten.bolt', { bolt: position })}, mm`}>
            <input
              inputMode="decimal"
              autoComplete="off"
              value={read.get(position) ?? ''}
              onChange={(event) => setRead(new Map([...read, [position, event.target.value]]))}
            />
          </Field>
        ))}
      </Row>
      <Button disabled={gaps.some(({ gap }) => gap === undefined) || world.holder === undefined} onClick={() => void record()}>
        {say('app.save')}
      </Button>
    </Section>
  );
}
