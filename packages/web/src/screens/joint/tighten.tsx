import { beforeNextBolt, type EndSignal, type SafeStop, type StillDoes } from '@clampwright/core';
import { type BatteryDraft, hasTrouble } from '@clampwright/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { batteryLeft } from '../../job/battery-left.ts';
import type { Book } from '../../job/book.ts';
import { isLookedAt } from '../../job/joint-state.ts';
import { type BoltTask, lastTightened, type StepState, taskOf } from '../../job/next-bolt.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { isChecked } from '../../job/today.ts';
import { readNumber } from '../../language/read-number.ts';
import { useSay, useTrade } from '../../language/speech.tsx';
import { useAwake } from '../../ui/awake.ts';
import { cheer } from '../../ui/cheer.ts';
import { MainAction } from '../../ui/main-action.tsx';
import { Banner, Button, Check, Field, LinkButton, Page, Row, Soft } from '../../ui/page.tsx';
import { useSettings } from '../../ui/settings.ts';
import { useJob } from '../../ui/world-context.ts';
import { Batch } from './batch.tsx';
import { JointDrawing } from './joint-drawing.tsx';
import { OtherBolt } from './other-bolt.tsx';
import { SettingChange } from './setting-change.tsx';
import css from './tighten.module.css';
import { Why } from './why.tsx';

/** One bolt after the other: which, at what setting, until what, and one action. */
export function TightenScreen({ state }: { readonly state: OpenJoint }) {
  const say = useSay();
  const { world } = useJob();
  const { joint, current, stopped, holds } = state;
  const back = `/joint/${joint.joint}`;
  if (stopped || holds.length > 0 || world.holder === undefined)
    return (
      <Page title={say('tighten.title', { tag: joint.tag ?? '' })} back={back}>
        <Banner level="stop">
          <p className={css.say}>
            {stopped ? say(`stopped.${stopped.why}`, { number: stopped.number }) : say(holds.length > 0 ? 'today.held' : 'who.needed')}
          </p>
        </Banner>
      </Page>
    );
  if (!current)
    return (
      <Page title={say('tighten.title', { tag: joint.tag ?? '' })} back={back}>
        <Banner level="fine">{say('joint.all-done')}</Banner>
        <LinkButton href={back} kind="act">
          {say('joint.sign')}
        </LinkButton>
        <Undo state={state} />
      </Page>
    );
  // an address that is kept or scanned must not lead past what comes before the first bolt
  if (!isLookedAt(joint))
    return (
      <Page title={say('tighten.title', { tag: joint.tag ?? '' })} back={back}>
        <Banner level="stop">
          <p className={css.say}>{say('tighten.before-first')}</p>
        </Banner>
        <LinkButton href={back} kind="act">
          {joint.tag ?? joint.joint}
        </LinkButton>
      </Page>
    );
  return <Pull key={`${current.step} ${current.open[0]!.join()}`} state={state} current={current} />;
}

function Pull({ state, current }: { readonly state: OpenJoint; readonly current: StepState }) {
  const say = useSay();
  const trade = useTrade();
  const settings = useSettings();
  const [, go] = useLocation();
  const { world, book } = useJob();
  const { joint, card } = state;
  const [chosen, setChosen] = useState<{ readonly bolt: number; readonly why: string }>();
  const [angle, setAngle] = useState('');
  const [moved, setMoved] = useState(false);
  const [radio, setRadio] = useState(false);
  const [batch, setBatch] = useState(false);
  const lit = useAwake();
  const last = lastTightened(joint, world.device.id);
  const bolts = chosen ? [chosen.bolt] : current.open[0]!;
  const task = taskOf(joint, card, bolts[0]!, current.step);
  // what this device last recorded here; before its first bolt the tool has to be set, too
  const before = last && { tool: last.told.tool, setting: last.told.setting };
  const changes = task?.setting !== undefined && (before?.setting !== task.setting || before.tool !== task.tool);
  const [seen, setSeen] = useState(false);
  if (!task) return null;
  const battery = batteryIn(book, task.inHand);
  const left = battery && batteryLeft(battery, book.jobOf(joint.plan?.number), card);
  const supply = left && beforeNextBolt(left.sure, task.plan.end.kind === 'mark at angle' ? 'angle' : 'torque');
  const stopsFor = task.tool !== undefined && !isChecked(book, task.tool) ? 'tool' : supply === 'do not start' ? 'battery' : undefined;
  const end: EndSignal['kind'] = current.repeats && moved ? 'stall' : task.plan.end.kind;
  const told = {
    joint: joint.joint,
    step: current.step,
    card: joint.plan!.slice.card,
    end,
    ...(task.tool === undefined ? {} : { tool: task.tool }),
    ...(task.setting === undefined ? {} : { setting: task.setting }),
    ...(battery === undefined ? {} : { battery: battery.battery }),
  };
  const degrees = readNumber(angle);
  const record = async (which: readonly number[]) => {
    if (chosen && chosen.why.trim() !== '')
      await book.record('note-written', { joint: joint.joint, text: chosen.why.trim() }, world.holder);
    if (which.length === 1)
      await book.record(
        'bolt-tightened',
        { ...told, bolt: which[0]!, ...(degrees === undefined ? {} : { angleMilliDegree: Math.round(degrees * 1000) }) },
        world.holder,
      );
    else await book.record('batch-tightened', { ...told, bolts: [...which] }, world.holder);
    cheer(settings, say('tighten.bolt', { bolt: which.at(-1)! }));
    setChosen(undefined);
  };
  const setting = trade.setting(task.plan, task.setting);
  const name = bolts.length === 1 ? say('tighten.bolt', { bolt: bolts[0]! }) : say('tighten.bolts', { bolts: bolts.join(' + ') });
  return (
    <Page title={say('tighten.title', { tag: joint.tag ?? '' })} back={`/joint/${joint.joint}`}>
      {bolts.some((bolt) => hasTrouble(joint, bolt)) ? <Banner level="stop">{say('tighten.trouble')}</Banner> : null}
      <div className={css.pull} data-radio={radio}>
        <p className={css.step}>{say('tighten.step', { step: trade.step(current.step), n: current.n, of: current.of })}</p>
        <p className={css.bolt}>{name}</p>
        <p className={css.settingName}>{say('tighten.setting')}</p>
        <p className={task.setting === undefined ? css.noSetting : css.setting}>{setting}</p>
        {radio ? (
          <>
            <p className={css.say}>{say('tighten.radio-say', { bolt: bolts.join(' + '), setting })}</p>
            <p>{say('tighten.radio-back')}</p>
          </>
        ) : null}
        <p className={css.end}>
          {say('tighten.ends')}: <strong>{trade.end(task.plan.end)}</strong>
        </p>
      </div>
      {stopsFor === 'tool' ? (
        <NotYet
          text={say('tighten.tool-unchecked', { tool: task.tool! })}
          href={`/tool/${encodeURIComponent(task.tool!)}?then=/joint/${joint.joint}/tighten`}
          way={say('joint.tool-check', { tool: task.tool! })}
        />
      ) : stopsFor === 'battery' ? (
        <NotYet
          text={say('tighten.battery-stop', { battery: battery!.battery })}
          href={`/joint/${joint.joint}/else/${bolts[0]}`}
          way={say('else.battery')}
        />
      ) : changes && !seen ? (
        <SettingChange was={before?.setting} tool={task.tool!} setting={setting} onSeen={() => setSeen(true)} />
      ) : (
        <MainAction
          key={bolts.join()}
          guard={settings.guard}
          label={say('tighten.done')}
          which={say('tighten.done-which', { bolt: bolts.join(' + ') })}
          onDone={() => record(bolts)}
        />
      )}
      <StepBegins state={state} current={current} />
      <LinkButton href={`/joint/${joint.joint}/else/${bolts[0]}`}>{say('tighten.else')}</LinkButton>
      <Undo state={state} />
      {current.repeats ? <Check label={say('tighten.moved')} checked={moved} onChange={setMoved} /> : null}
      {task.plan.end.kind === 'mark at angle' ? (
        <Field label={say('tighten.angle')}>
          <input inputMode="decimal" value={angle} onChange={(event) => setAngle(event.target.value)} autoComplete="off" />
        </Field>
      ) : null}
      {radio ? null : <JointDrawing state={state} now={bolts} turnable />}
      {last ? <p role="status">{say('tighten.recorded', { bolt: last.bolt })}</p> : null}
      <PullFacts state={state} current={current} task={task} battery={battery} left={left} supply={supply} />
      <Why state={state} task={task} />
      {lit ? null : <Soft>{say('tighten.awake')}</Soft>}
      <Row>
        <Button aria-pressed={radio} onClick={() => setRadio(!radio)}>
          {say('tighten.radio')}
        </Button>
        <Button aria-pressed={batch} onClick={() => setBatch(!batch)}>
          {say('tighten.batch')}
        </Button>
      </Row>
      {batch ? (
        <Batch
          lines={current.open}
          same={(bolt) => taskOf(joint, card, bolt, current.step)?.setting === task.setting}
          onDone={(which) => void record(which).then(() => setBatch(false))}
        />
      ) : null}
      <OtherBolt open={current.open.flat()} next={current.open[0]![0]!} onChosen={(bolt, why) => setChosen({ bolt, why })} />
      <Button kind="quiet" onClick={() => go('/')}>
        {say('app.today')}
      </Button>
    </Page>
  );
}

interface PullFactsProps {
  readonly state: OpenJoint;
  readonly current: StepState;
  readonly task: BoltTask;
  readonly battery: BatteryDraft | undefined;
  readonly left: StillDoes | undefined;
  readonly supply: ReturnType<typeof beforeNextBolt> | undefined;
}

function PullFacts({ state: { card }, current, task, battery, left, supply }: PullFactsProps) {
  const say = useSay();
  const trade = useTrade();
  const { tool, inHand, torque, reaction: force } = task;
  const shown = force === undefined ? undefined : `${trade.figure(force / 1000, 1)} kN`;
  const facts = [
    say('tighten.left', { count: current.left }),
    tool && say('tighten.tool', { tool }),
    torque && `${trade.figure(torque / 1000, 0)} N·m`,
    shown &&
      (card.reactionPoint === undefined
        ? say('tighten.reaction-force', { force: shown })
        : say('tighten.reaction', { point: card.reactionPoint, force: shown })),
    inHand && (battery ? say('tighten.battery', { battery: battery.battery, pulls: battery.boltsSinceChange }) : say('tighten.no-battery')),
    battery && (left ? say('tighten.battery-left', { sure: left.sure, median: left.median }) : say('tighten.battery-read')),
    supply === 'change and finish' && say('tighten.battery-change'),
  ].filter((one) => typeof one === 'string');
  return (
    <ul className={css.facts}>
      {facts.map((fact) => (
        <li key={fact}>{fact}</li>
      ))}
    </ul>
  );
}

const batteryIn = ({ fold }: Book, tool: string | undefined): BatteryDraft | undefined =>
  tool === undefined
    ? undefined
    : fold
        .ids('battery')
        .map((id) => fold.state('battery', id))
        .find(({ inTool }) => inTool === tool);

/** What has to be done before this bolt, in the place of the action. */
const NotYet = ({ text, href, way }: { readonly text: string; readonly href: string; readonly way: string }) => (
  <>
    <Banner level="stop">{text}</Banner>
    <LinkButton href={href} kind="act">
      {way}
    </LinkButton>
  </>
);

/** Takes back the last bolt that this device recorded: a correction, which removes nothing. */
function Undo({ state: { joint } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const { world, book } = useJob();
  const last = lastTightened(joint, world.device.id);
  if (!last || last.told.batch) return null;
  return (
    <Button
      kind="quiet"
      onClick={() => void book.record('correction', { corrects: last.told.entry, reason: say('tighten.undo-why') }, world.holder)}
    >
      {say('tighten.undo', { bolt: last.bolt })}
    </Button>
  );
}

/** A step has just ended on every bolt: what comes next, and that work may rest here where the method lets it. */
function StepBegins({ state: { joint, card, steps }, current }: { readonly state: OpenJoint; readonly current: StepState }) {
  const say = useSay();
  const trade = useTrade();
  const begun = [...joint.bolts.values()].some(({ steps: done }) => (done[current.step]?.length ?? 0) > 0);
  if (begun || current.n === 1 || !steps.slice(0, current.n - 1).every(({ left }) => left === 0)) return null;
  return (
    <Banner level="plain">
      <p>{say('tighten.step-changes', { step: trade.step(current.step) })}</p>
      {restsAfter(card.work?.safeStop, current.n - 1) ? <p>{say('tighten.step-rest')}</p> : null}
    </Banner>
  );
}

/** By its method, may the joint rest after so many whole steps (snug is the first)? */
function restsAfter(safeStop: SafeStop | undefined, steps: number): boolean {
  if (safeStop === undefined) return false;
  return safeStop === 'after a whole round' || (safeStop === 'after all bolts are snug' ? steps === 1 : steps === 2);
}
