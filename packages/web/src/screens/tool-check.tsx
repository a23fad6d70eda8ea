import { useState } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { loadedTools } from '../job/loaded-tools.ts';
import { today } from '../job/today.ts';
import { readNumber } from '../language/read-number.ts';
import { useSay } from '../language/speech.tsx';
import { Banner, Button, Field, Page, Row, Soft } from '../ui/page.tsx';
import { useJob } from '../ui/world-context.ts';

/** The daily check of one tool: at a setting, against the reference, passed or failed. */
export function ToolScreen({ tool }: { readonly tool: string }) {
  const say = useSay();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const [asked] = useSearchParams();
  const then = asked.get('then') ?? '/';
  const { checks, ...told } = book.fold.state('tool', tool);
  const loaded = loadedTools(book, world.yard, book.fold.state('book', 'book').plans.at(-1)?.number).find(({ serial }) => serial === tool);
  const name = told.name ?? loaded?.name;
  const due = told.due ?? loaded?.chart.certificate.due;
  const [setting, setSetting] = useState('');
  const [reading, setReading] = useState('');
  const torque = readNumber(reading);
  const record = async (passed: boolean) => {
    await book.record(
      'tool-checked',
      { tool, setting: setting.trim(), passed, ...(torque === undefined ? {} : { readingNewtonMillimetre: Math.round(torque * 1000) }) },
      world.holder,
    );
    if (passed) go(then);
  };
  const failed = checks.findLast(({ mention }) => mention.on === today())?.passed === false;
  if (due === undefined)
    return (
      <Page title={say('joint.tool-check', { tool })} back={then}>
        <Banner level="stop">{say('joint.tool-unknown')}</Banner>
      </Page>
    );
  return (
    <Page title={say('joint.tool-check', { tool })} back={then}>
      <Soft>
        {name === undefined ? '' : `${name} · `}
        {say(due < today() ? 'today.tool-expired' : 'today.tool-due', { due })}
      </Soft>
      <Soft>{say('joint.tool-check-text')}</Soft>
      {failed ? <Banner level="stop">{say('joint.tool-stop')}</Banner> : null}
      <Field label={say('joint.tool-setting')}>
        <input value={setting} onChange={(event) => setSetting(event.target.value)} autoComplete="off" />
      </Field>
      <Field label={say('joint.tool-reading')}>
        <input value={reading} inputMode="decimal" onChange={(event) => setReading(event.target.value)} autoComplete="off" />
      </Field>
      <Row>
        <Button kind="act" disabled={setting.trim() === ''} onClick={() => void record(true)}>
          {say('joint.tool-passed')}
        </Button>
        <Button kind="stop" disabled={setting.trim() === ''} onClick={() => void record(false)}>
          {say('joint.tool-failed')}
        </Button>
      </Row>
    </Page>
  );
}
