import { useState } from 'react';
import { drawnBolts, recordedSeed } from '../../job/drawn-sample.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { readNumber } from '../../language/read-number.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import { Banner, Button, Field, Page, Row, Section, Soft } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

/** The sample of a joint, drawn by the rule set and looked at one by one; verdict and signature. */
export function InspectScreen({ state }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const { joint, card } = state;
  // drawn when the inspector comes, so that nobody knows it before
  const [fresh] = useState(() => crypto.getRandomValues(new Uint32Array(1))[0]!);
  const sample = drawnBolts(card, recordedSeed(book, joint) ?? fresh);
  const looked = (bolt: number) => joint.bolts.get(bolt)?.inspections.at(-1);
  const next = sample.bolts.find((bolt) => looked(bolt) === undefined);
  const failed = sample.bolts.filter((bolt) => looked(bolt)?.passed === false).length;
  const signed = joint.signatures.some(({ as }) => as === 'inspector');
  return (
    <Page title={say('inspect.title', { tag: joint.tag ?? '' })} back={`/joint/${joint.joint}`}>
      {world.holder === undefined ? <Banner level="mind">{say('who.needed')}</Banner> : null}
      {card.inspection ? <Soft>{say('inspect.method', { method: trade.inspection(card.inspection.method) })}</Soft> : null}
      {sample.bolts.length === 0 ? (
        <Banner level="mind">{say('inspect.none')}</Banner>
      ) : (
        <Soft>
          {say('inspect.sample', { bolts: sample.bolts.join(', ') })} ({say('inspect.seed', { seed: sample.seed })})
        </Soft>
      )}
      {next === undefined ? null : <Look key={next} state={state} bolt={next} seed={String(sample.seed)} />}
      {next === undefined && sample.bolts.length > 0 ? (
        <Banner level={failed === 0 ? 'fine' : 'stop'}>
          {failed === 0 ? say('inspect.all-passed') : say('inspect.some-failed', { count: failed })}
        </Banner>
      ) : null}
      {next === undefined && !signed ? (
        <Button
          kind="act"
          disabled={world.holder === undefined}
          onClick={() => void book.record('joint-signed', { joint: joint.joint, as: 'inspector' }, world.holder)}
        >
          {say('inspect.sign')}
        </Button>
      ) : null}
    </Page>
  );
}

function Look({ state: { joint, card }, bolt, seed }: { readonly state: OpenJoint; readonly bolt: number; readonly seed: string }) {
  const say = useSay();
  const { world, book } = useJob();
  const [angle, setAngle] = useState('');
  const degrees = readNumber(angle);
  const record = (passed: boolean) =>
    void book.record(
      'inspected',
      {
        joint: joint.joint,
        bolt,
        rule: card.rule.id,
        seed,
        passed,
        ...(degrees === undefined ? {} : { angleMilliDegree: Math.round(degrees * 1000) }),
      },
      world.holder,
    );
  return (
    <Section title={say('inspect.bolt', { bolt })}>
      <Field label={say('inspect.angle')}>
        <input inputMode="decimal" value={angle} onChange={(event) => setAngle(event.target.value)} autoComplete="off" />
      </Field>
      <Row>
        <Button kind="act" disabled={world.holder === undefined} onClick={() => record(true)}>
          {say('inspect.passed')}
        </Button>
        <Button kind="stop" disabled={world.holder === undefined} onClick={() => record(false)}>
          {say('inspect.failed')}
        </Button>
      </Row>
    </Section>
  );
}
