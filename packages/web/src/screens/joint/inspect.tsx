import { useState } from 'react';
import { drawnBolts, recordedSeed } from '../../job/drawn-sample.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { toLookAt } from '../../job/to-look-at.ts';
import { readNumber } from '../../language/read-number.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import { Banner, Button, Field, Page, Row, Soft } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';
import big from './tighten.module.css';

/** The sample of a joint, drawn by the rule set and looked at one by one; verdict and signature. */
export function InspectScreen({ state }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const { joint, card } = state;
  // drawn when the inspector comes, so that nobody knows it before
  const [fresh] = useState(() => crypto.getRandomValues(new Uint32Array(1))[0]!);
  const sample = drawnBolts(card, recordedSeed(book, joint) ?? fresh);
  const { next, failed, extended } = toLookAt(joint, card, sample.bolts);
  const byTorque = card.inspection?.torqueProves === true && card.inspection.method === 'control torque';
  const [wrench, setWrench] = useState('');
  const used = new Set(
    [...joint.bolts.values()].flatMap(({ steps }) => Object.values(steps).flatMap((told) => told.map(({ tool }) => tool))),
  );
  const own = used.has(wrench.trim());
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
      {extended.length > 0 ? <Banner level="stop">{say('inspect.extended', { bolts: extended.join(', ') })}</Banner> : null}
      {byTorque && next !== undefined ? (
        <>
          <Field label={say('inspect.wrench')} hint={say('inspect.wrench-hint')}>
            <input value={wrench} onChange={(event) => setWrench(event.target.value)} autoComplete="off" autoCapitalize="characters" />
          </Field>
          {own ? <Banner level="stop">{say('inspect.wrench-own', { tool: wrench.trim() })}</Banner> : null}
        </>
      ) : null}
      {next === undefined ? null : (
        <Look
          key={next}
          state={state}
          bolt={next}
          seed={String(sample.seed)}
          wrench={wrench.trim()}
          ready={!byTorque || (wrench.trim() !== '' && !own)}
        />
      )}
      {next === undefined && sample.bolts.length > 0 ? (
        <Banner level={failed.length === 0 ? 'fine' : 'stop'}>
          {failed.length === 0 ? say('inspect.all-passed') : say('inspect.some-failed', { count: failed.length })}
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

interface LookProps {
  readonly state: OpenJoint;
  readonly bolt: number;
  readonly seed: string;
  /** the inspector's own, where the method takes one */
  readonly wrench: string;
  readonly ready: boolean;
}

function Look({ state: { joint, card }, bolt, seed, wrench, ready }: LookProps) {
  const say = useSay();
  const { world, book } = useJob();
  const trade = useTrade();
  const [angle, setAngle] = useState('');
  const torque = card.subgroups.find(({ positions }) => positions.includes(bolt))?.tightening?.controlTorque?.value;
  const degrees = readNumber(angle);
  const record = (passed: boolean) =>
    void book.record(
      'inspected',
      {
        joint: joint.joint,
        bolt,
        rule: card.rule.id,
        seed,
        ...(wrench === '' ? {} : { tool: wrench }),
        passed,
        ...(degrees === undefined ? {} : { angleMilliDegree: Math.round(degrees * 1000) }),
      },
      world.holder,
    );
  return (
    <section className={big.look}>
      <h2 className={big.bolt}>{say('inspect.bolt', { bolt })}</h2>
      {wrench !== '' && torque !== undefined ? (
        <p className={big.say}>{say('inspect.torque', { torque: `${trade.figure(torque / 1000, 0)} N·m` })}</p>
      ) : null}
      <Field label={say('inspect.angle')}>
        <input inputMode="decimal" value={angle} onChange={(event) => setAngle(event.target.value)} autoComplete="off" />
      </Field>
      <Row>
        <Button kind="act" disabled={world.holder === undefined || !ready} onClick={() => record(true)}>
          {say('inspect.passed')}
        </Button>
        <Button kind="stop" disabled={world.holder === undefined || !ready} onClick={() => record(false)}>
          {say('inspect.failed')}
        </Button>
      </Row>
    </section>
  );
}
