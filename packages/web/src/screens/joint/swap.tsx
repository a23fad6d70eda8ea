import type { Tool } from '@clampwright/core';
import { hashOf, utf8 } from '@clampwright/record';
import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { loadedTools } from '../../job/loaded-tools.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { swapTo } from '../../job/swap.ts';
import { isChecked, today } from '../../job/today.ts';
import { useNotice, useSay, useTrade } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Banner, Button, Page, Row, Section, Soft } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';

/** Another tool takes over on the spot: settings for the bolts that remain, from the chart of its own serial number. */
export function SwapScreen({ state, from, now }: { readonly state: OpenJoint; readonly from: string; readonly now: string }) {
  const say = useSay();
  const { world, book } = useJob();
  const { joint } = state;
  const back = `/joint/${joint.joint}/tighten`;
  const [serial, setSerial] = useState<string>();
  const tools = loadedTools(book, world.yard, joint.plan?.number).filter((tool) => tool.serial !== now);
  const chosen = tools.find((tool) => tool.serial === serial);
  return (
    <Page title={say('else.swap')} back={back}>
      <Soft>{say('swap.text', { tool: now })}</Soft>
      {tools.length === 0 ? <Banner level="mind">{say('else.swap-none')}</Banner> : null}
      <Row>
        {tools.map((tool) => (
          <Button
            key={tool.serial}
            kind={tool.serial === serial ? 'act' : 'plain'}
            aria-pressed={tool.serial === serial}
            onClick={() => setSerial(tool.serial)}
          >
            {tool.serial} · {tool.name}
          </Button>
        ))}
      </Row>
      {chosen ? <Settings key={chosen.serial} state={state} from={from} tool={chosen} /> : null}
    </Page>
  );
}

function Settings({ state: { joint, card }, from, tool }: { readonly state: OpenJoint; readonly from: string; readonly tool: Tool }) {
  const say = useSay();
  const trade = useTrade();
  const notice = useNotice();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const job = book.jobOf(joint.plan?.number);
  const swap = useMemo(() => job && swapTo(job, card, from, tool, today()), [job, card, from, tool]);
  if (!swap) return <Banner level="mind">{say('swap.no-job')}</Banner>;
  const several = new Set(swap.settings.map(({ positions }) => positions?.join())).size > 1;
  const use = async () => {
    setBusy(true);
    const { serial, name, kind, chart } = tool;
    const bytes = utf8(JSON.stringify(tool));
    const sheet = await world.device.attach(book.job, bytes);
    const known = book.fold.state('tool', serial);
    if (known.due !== chart.certificate.due)
      await book.record(
        'tool-registered',
        { tool: serial, name, kind, chart: hashOf(bytes), certificate: chart.certificate.number, due: chart.certificate.due },
        world.holder,
      );
    await book.record('tool-swapped', { joint: joint.joint, from, to: serial, chart: sheet, settings: [...swap.settings] }, world.holder);
    const bolts = `/joint/${joint.joint}/tighten`;
    go(isChecked(book, serial) ? bolts : `/tool/${encodeURIComponent(serial)}?then=${encodeURIComponent(bolts)}`);
  };
  return (
    <Section title={`${tool.serial} · ${tool.name}`}>
      <Soft>{say('today.tool-due', { due: tool.chart.certificate.due })}</Soft>
      {swap.notices.map((one) => (
        <Banner key={`${one.code} ${JSON.stringify(one.params)}`} level="mind">
          <p>{notice.says(one)}</p>
          <p>{notice.remedy(one)}</p>
        </Banner>
      ))}
      <ul className={css.list}>
        {swap.settings.map(({ step, setting, positions = [], reactionNewton }) => (
          <li key={`${step} ${positions.join()}`} className={css.item}>
            <span>
              {trade.step(step)}
              {several ? <small>{say('swap.bolts', { bolts: positions.join(', ') })}</small> : null}
            </span>
            <span>
              <strong>{trade.settingText(setting)}</strong>
              {reactionNewton === undefined ? null : (
                <small>{say('tighten.reaction-force', { force: `${trade.figure(reactionNewton / 1000, 1)} kN` })}</small>
              )}
            </span>
          </li>
        ))}
      </ul>
      {swap.stops ? (
        <Banner level="stop">{say('swap.stops', { tool: tool.serial })}</Banner>
      ) : (
        <Button kind="act" disabled={busy || world.holder === undefined} onClick={() => void use()}>
          {say('swap.use', { tool: tool.serial })}
        </Button>
      )}
    </Section>
  );
}
