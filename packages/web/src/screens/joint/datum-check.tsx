import { useState } from 'react';
import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay } from '../../language/speech.tsx';
import { Banner, Button, Field, Row, Section } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

type Datum = { readonly boltOne: string; readonly direction: 'clockwise' | 'counter-clockwise'; readonly viewedFrom: string };

/** Bolt 1, the way the numbers run, and from which side: held against the steel before the first bolt. */
export function DatumCheck({ state: { joint, card }, disabled }: { readonly state: OpenJoint; readonly disabled: boolean }) {
  const say = useSay();
  const { world, book } = useJob();
  const planned = card.datum;
  const [other, setOther] = useState<Datum | undefined>(planned ? undefined : { boltOne: '', direction: 'clockwise', viewedFrom: '' });
  const confirm = (datum: Datum) => {
    void book.record('datum-confirmed', { joint: joint.joint, ...datum }, world.holder);
    setOther(undefined);
  };
  return (
    <Section title={say('joint.datum')}>
      <p>{planned ? say('joint.datum-text', { ...planned, direction: say(`joint.${planned.direction}`) }) : say('joint.datum-none')}</p>
      {joint.datum?.agrees ? <Banner level="fine">{say('joint.datum-right')}</Banner> : null}
      {joint.datum?.agrees === false ? <Banner level="stop">{say('joint.datum-stop')}</Banner> : null}
      {other ? (
        <>
          <Field label={say('joint.datum-where')}>
            <input value={other.boltOne} onChange={(event) => setOther({ ...other, boltOne: event.target.value })} />
          </Field>
          <Field label={say('joint.datum-from')}>
            <input value={other.viewedFrom} onChange={(event) => setOther({ ...other, viewedFrom: event.target.value })} />
          </Field>
          <Row>
            {(['clockwise', 'counter-clockwise'] as const).map((direction) => (
              <Button
                key={direction}
                kind={other.direction === direction ? 'act' : 'plain'}
                aria-pressed={other.direction === direction}
                onClick={() => setOther({ ...other, direction })}
              >
                {say(`joint.${direction}`)}
              </Button>
            ))}
          </Row>
          <Button disabled={disabled || other.boltOne.trim() === '' || other.viewedFrom.trim() === ''} onClick={() => confirm(other)}>
            {say('app.save')}
          </Button>
        </>
      ) : joint.datum ? null : (
        <Row>
          <Button disabled={disabled} onClick={() => confirm(planned!)}>
            {say('joint.datum-right')}
          </Button>
          <Button
            kind="stop"
            disabled={disabled}
            onClick={() => setOther({ boltOne: '', direction: planned!.direction, viewedFrom: planned!.viewedFrom })}
          >
            {say('joint.datum-other')}
          </Button>
        </Row>
      )}
    </Section>
  );
}
