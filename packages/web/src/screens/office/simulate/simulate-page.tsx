import { ENGINE, mistakeRates, type SimulationResult, simulationResult, simulationTask, USUAL_MISTAKES } from '@clampwright/core';
import { useEffect, useRef, useState } from 'react';
import { desk } from '../../../draft/desk.ts';
import type { Files } from '../../../draft/draft.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { readNumber } from '../../../language/read-number.ts';
import { useNotice } from '../../../language/speech.tsx';
import { engine } from '../../../planning/planning.ts';
import { playHere } from '../../../simulating/play-here.ts';
import { Banner, Button, Field, Row, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { NoDraft } from '../shell/no-draft.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { Outcome } from './outcome.tsx';

type Mistake = keyof typeof USUAL_MISTAKES;
const MISTAKES = Object.keys(USUAL_MISTAKES) as Mistake[];

interface Run {
  readonly result: SimulationResult;
  readonly files: Files;
  readonly seconds: number;
}

/** The job played in advance, on all cores: how often a bolt ends outside its window, and why. */
export function SimulatePage() {
  const say = useOffice();
  const { says, remedy } = useNotice();
  const here = useWatched(desk);
  const [runs, setRuns] = useState('1000');
  const [seed, setSeed] = useState('1');
  const [rates, setRates] = useState<Readonly<Record<Mistake, string>>>(USUAL);
  const [progress, setProgress] = useState<{ readonly done: number; readonly of: number }>();
  const [run, setRun] = useState<Run>();
  const [failed, setFailed] = useState(false);
  const stop = useRef<AbortController>(undefined);
  useEffect(() => () => stop.current?.abort(), []);
  if (!here) return <NoDraft title={say('office.page-simulate')} />;
  const { files } = here.draft;
  const given = mistakeRates(Object.fromEntries(MISTAKES.map((name) => [name, (readNumber(rates[name]) ?? Number.NaN) / 100])));
  const asked = simulationTask(Number(runs), Number(seed), given.ok ? given.value : USUAL_MISTAKES);
  const wrong = [...(given.ok ? [] : given.notices), ...(asked.ok ? [] : asked.notices)];
  const play = async () => {
    if (!asked.ok) return;
    const began = performance.now();
    const abort = new AbortController();
    stop.current = abort;
    setFailed(false);
    setProgress({ done: 0, of: 1 });
    try {
      const simulated = await engine.simulated();
      if (!simulated) return setFailed(true);
      const tally = await playHere(simulated.job, asked.value, {
        progress: (done, of) => setProgress({ done, of }),
        stopped: abort.signal,
      });
      setRun({
        result: simulationResult(ENGINE, simulated.job, simulated.notSimulated, asked.value, tally),
        files,
        seconds: (performance.now() - began) / 1000,
      });
    } finally {
      setProgress(undefined);
    }
    return undefined;
  };
  return (
    <OfficeShell title={say('office.page-simulate')}>
      <Soft>{say('play.lead')}</Soft>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void play();
        }}
      >
        <Row>
          <Field label={say('play.runs')}>
            <input value={runs} inputMode="numeric" onChange={(event) => setRuns(event.target.value)} />
          </Field>
          <Field label={say('play.seed')}>
            <input value={seed} inputMode="numeric" onChange={(event) => setSeed(event.target.value)} />
          </Field>
          {progress === undefined ? (
            <Button type="submit" kind="act" disabled={wrong.length > 0}>
              {say('play.play')}
            </Button>
          ) : (
            <Button kind="stop" onClick={() => stop.current?.abort()}>
              {say('play.stop')}
            </Button>
          )}
        </Row>
        <details>
          <summary>{say('play.mistakes')}</summary>
          <Soft>{say('play.mistakes-text')}</Soft>
          <Row>
            {MISTAKES.map((name) => (
              <Field key={name} label={say(`play.mistake-${name}`)}>
                <input value={rates[name]} inputMode="decimal" onChange={(event) => setRates({ ...rates, [name]: event.target.value })} />
              </Field>
            ))}
          </Row>
        </details>
      </form>
      {wrong.map((one) => (
        <Banner key={one.code} level="mind">
          {says(one)} {remedy(one)}
        </Banner>
      ))}
      {failed ? <Banner level="mind">{say('sheet.no-job')}</Banner> : null}
      {progress === undefined ? null : (
        <p role="status">
          <progress value={progress.done} max={progress.of} aria-label={say('play.playing')} />{' '}
          {say('play.progress', { percent: Math.floor((100 * progress.done) / progress.of) })}
        </p>
      )}
      {run ? (
        <>
          {run.files === files ? null : <Banner level="mind">{say('play.older')}</Banner>}
          <Outcome result={run.result} seconds={run.seconds} />
          <Section title={say('play.keep')}>
            <Button onClick={() => save('simulation.json', `${JSON.stringify(run.result, null, 1)}\n`)}>{say('play.save')}</Button>
          </Section>
        </>
      ) : null}
    </OfficeShell>
  );
}

const USUAL = Object.fromEntries(MISTAKES.map((name) => [name, String(+(USUAL_MISTAKES[name] * 100).toFixed(4))])) as Record<
  Mistake,
  string
>;
