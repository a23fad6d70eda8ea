import { useEffect, useRef, useState } from 'react';
import { keep, kept } from '../device/database.ts';
import { turnsTold } from '../job/turns.ts';
import { useNotice, useSay, useTrade } from '../language/speech.tsx';
import list from '../ui/page.module.css';
import { Banner, Button, Facts, Page, Row, Section, Soft } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';
import { HolderLine } from './holder-line.tsx';
import big from './joint/tighten.module.css';
import css from './valve.module.css';

/** A gate valve: which way, at what setting, turns counted, and where the tool has to come off. */
export function ValveScreen({ id }: { readonly id: string }) {
  const say = useSay();
  const trade = useTrade();
  const notice = useNotice();
  const { book } = useJob();
  const joint = book.fold.state('joint', id);
  const valve = book.valveOf(joint);
  if (!valve)
    return (
      <Page title={joint.tag ?? id} back="/">
        <Banner level="mind">{say('joint.no-card')}</Banner>
      </Page>
    );
  const { plan, way, opens } = valve;
  const direction = way === 'opening' ? 'open' : 'close';
  const clockwise = (opens === 'clockwise') === (way === 'opening');
  return (
    <Page title={say('valve.title', { tag: valve.tag })} back="/">
      <HolderLine />
      {plan.verdict === 'stop' ? <Banner level="stop">{say('valve.stop')}</Banner> : null}
      {plan.notices.map((one) => (
        <Banner key={one.code} level="mind">
          <p>{notice.says(one)}</p>
          <p>{notice.remedy(one)}</p>
        </Banner>
      ))}
      {plan.verdict === 'stop' ? null : (
        <>
          <div className={big.pull}>
            <p className={css.way}>{say('valve.way', { way: direction, turn: clockwise ? 'clockwise' : 'counter' })}</p>
            {plan.setting ? (
              <>
                <p className={big.settingName}>{say('tighten.setting')}</p>
                <p className={big.setting}>{trade.settingText(plan.setting.text)}</p>
              </>
            ) : null}
          </div>
          {plan.setting ? (
            <Banner level="mind">{say('valve.stop-at', { turns: trade.figure(plan.stopAt, 0) })}</Banner>
          ) : (
            <Banner level="plain">{say('valve.hand')}</Banner>
          )}
          <Count key={id} id={id} direction={direction} />
        </>
      )}
      <Facts
        facts={[
          [say('valve.whole'), trade.figure(plan.turns, 1)],
          [say('valve.torque'), `${trade.figure(plan.torque / 1000, 0)} N·m`],
          [say('valve.told'), trade.figure(turnsTold(joint, direction), 1)],
        ]}
      />
      <Section title={say('joint.cautions')}>
        <ul>
          {plan.cautions.map((code) => (
            <li key={code} className={list.check}>
              {trade.valveCaution(code)}
            </li>
          ))}
        </ul>
      </Section>
      <Soft>{say('app.limits')}</Soft>
    </Page>
  );
}

const STEPS = [1, 5] as const;

/** Counts turns as they are called, on disk with each press, and records them when the valve rests. */
function Count({ id, direction }: { readonly id: string; readonly direction: 'open' | 'close' }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const joint = book.fold.state('joint', id);
  const { plan } = book.valveOf(joint)!;
  const key = `turns ${id}`;
  const [turns, setTurns] = useState<number>();
  const counted = useRef(0);
  useEffect(() => {
    void kept<number>(world.db, key).then((told = 0) => {
      counted.current = told;
      setTurns(told);
    });
  }, [world.db, key]);
  if (turns === undefined) return null;
  const at = turnsTold(joint, direction) + turns;
  const due = plan.setting !== undefined && at >= plan.stopAt;
  // presses may follow each other faster than the disk: each counts from the one before
  const count = async (by: number) => {
    counted.current = Math.max(0, counted.current + by);
    const now = counted.current;
    await keep(world.db, key, now);
    setTurns(counted.current);
  };
  const record = async () => {
    const { setting } = plan;
    await book.record(
      'valve-turned',
      { joint: id, direction, turnsThousandth: Math.round(1000 * turns), ...(setting ? { setting: setting.text } : {}) },
      world.holder,
    );
    await count(-turns);
  };
  return (
    <Section title={say('valve.turns')}>
      <p className={big.setting} role="status">
        {say('valve.at', { at: trade.figure(at, 0), turns: trade.figure(plan.turns, 0) })}
      </p>
      {due ? <Banner level="stop">{say(at >= plan.turns ? 'valve.seat' : 'valve.off')}</Banner> : null}
      <Row short>
        {STEPS.map((step) => (
          <Button key={step} kind="act" disabled={world.holder === undefined} onClick={() => void count(step)}>
            +{step}
          </Button>
        ))}
        <Button disabled={turns === 0} onClick={() => void count(-1)}>
          −1
        </Button>
      </Row>
      <Button kind="stop" disabled={turns === 0 || world.holder === undefined} onClick={() => void record()}>
        {say('valve.record', { turns: trade.figure(turns, 0) })}
      </Button>
    </Section>
  );
}
