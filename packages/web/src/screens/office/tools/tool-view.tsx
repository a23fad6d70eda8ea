import { type Tool, validateChart } from '@clampwright/core';
import { readUtf8 } from '@clampwright/record';
import { useMemo, useState } from 'react';
import type { Book } from '../../../job/book.ts';
import type { StoreTool } from '../../../job/store-tools.ts';
import { today } from '../../../job/today.ts';
import { useAttachment } from '../../../job/use-attachment.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice, useTrade } from '../../../language/speech.tsx';
import { Banner, Button, Facts, Field, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { useWorld } from '../../../ui/world-context.ts';
import { ChartCurve } from './chart-curve.tsx';
import { DriftPlot } from './drift-plot.tsx';
import { Photo } from './photo.tsx';
import { SecondCheck } from './second-check.tsx';
import { SettingTable } from './setting-table.tsx';
import own from './tools.module.css';

/** One tool: its certificate and chart as they count now, every version before, its checks and where they lead. */
export function ToolView({
  tool: { serial, name, tool, ofYard, due, checks, cutOuts, tightened },
  yard,
}: {
  readonly tool: StoreTool;
  readonly yard: Book;
}) {
  const say = useOffice();
  const { figure } = useTrade();
  const [shown, setShown] = useState<string>();
  const hash = shown ?? tool.sheet ?? tool.charts.at(-1)?.sheet;
  const sheet = useSheet(yard, hash);
  const typed = useSheet(yard, tool.typed);
  const now = today();
  const nameOf = (person: string | undefined) => (person === undefined ? say('store.nobody') : (yard.nameOf(person) ?? person));
  return (
    <>
      <Section title={`${serial} · ${name}`}>
        {tool.withdrawn ? <Banner level="stop">{say('store.withdrawn-for', { reason: tool.withdrawnFor ?? '' })}</Banner> : null}
        {due !== undefined && due < now ? <Banner level="stop">{say('store.is-overdue', { due })}</Banner> : null}
        {ofYard ? null : <Banner level="plain">{say('store.of-job')}</Banner>}
        <Facts
          facts={[
            [say('store.certificate'), tool.certificate ?? '–'],
            [say('store.due-on'), due ?? '–'],
            [say('store.tightened'), figure(tightened, 0)],
            ...(cutOuts.length > 0
              ? [[say('store.cut-outs'), cutOuts.map(({ mention, cause }) => `${mention.on} ${cause}`).join(', ')] as const]
              : []),
          ]}
        />
      </Section>
      {typed instanceof Object && 'chart' in typed ? (
        <SecondCheck key={tool.typed} yard={yard} tool={typed} typedBy={tool.certificates.at(-1)?.mention.by} />
      ) : null}
      {tool.typed !== undefined && typed === 'missing' ? <Banner level="mind">{say('store.sheet-missing')}</Banner> : null}
      {sheet === 'missing' ? <Soft>{say('store.sheet-missing')}</Soft> : null}
      {sheet instanceof Object ? <Sheet yard={yard} tool={sheet} /> : null}
      <Section title={say('store.checks')}>
        {sheet instanceof Object ? (
          <DriftPlot serial={serial} checks={checks} certificates={tool.certificates} chart={sheet.chart} />
        ) : null}
        {checks.length === 0 ? <Soft>{say('store.checks-none')}</Soft> : null}
        {checks.length === 0 ? null : (
          <div className={own.scroll}>
            <table className={own.table}>
              <thead>
                <tr>
                  <th scope="col">{say('store.col-day')}</th>
                  <th scope="col">{say('store.col-setting')}</th>
                  <th scope="col">{say('store.col-reading')}</th>
                  <th scope="col">{say('store.col-result')}</th>
                </tr>
              </thead>
              <tbody>
                {checks
                  .toReversed()
                  .slice(0, 60)
                  .map(({ mention, setting, readingNewtonMillimetre, passed }) => (
                    <tr key={mention.entry}>
                      <th scope="row">{mention.on}</th>
                      <td>{setting}</td>
                      <td>{readingNewtonMillimetre === undefined ? '–' : `${figure(readingNewtonMillimetre / 1000, 1)} N·m`}</td>
                      <td data-fault={passed ? undefined : ''}>{say(passed ? 'store.test-passed' : 'store.test-failed')}</td>
                    </tr>
                  ))}
              </tbody>
            </table>
          </div>
        )}
        <LinkButton href={`/tool/${encodeURIComponent(serial)}?then=/office/tools/${encodeURIComponent(serial)}`}>
          {say('store.check-now')}
        </LinkButton>
      </Section>
      <Section title={say('store.versions')}>
        <ul className={own.versions}>
          {tool.certificates.toReversed().map(({ mention, number, due: until }) => {
            const own = tool.charts.findLast((one) => one.certificate === number);
            return (
              <li key={mention.entry}>
                <strong>{number}</strong> <span>{say('store.is-due', { due: until })}</span>{' '}
                <span>{say('store.typed-by', { name: nameOf(mention.by), day: mention.on })}</span>{' '}
                <span>{own ? say('store.read-by', { name: nameOf(own.mention.by), day: own.mention.on }) : say('store.is-typed')}</span>{' '}
                {own ? (
                  <Button kind="quiet" aria-pressed={own.sheet === hash} onClick={() => setShown(own.sheet)}>
                    {say('store.show-version', { number })}
                  </Button>
                ) : null}
              </li>
            );
          })}
        </ul>
        {ofYard && !tool.withdrawn ? <Withdraw yard={yard} serial={serial} /> : null}
      </Section>
    </>
  );
}

/** A tool as it was read, out of the attachment that holds it. */
function useSheet(yard: Book, hash: string | undefined): Tool | 'missing' | undefined {
  const bytes = useAttachment(yard, hash);
  return useMemo(() => (bytes instanceof Uint8Array ? (JSON.parse(readUtf8(bytes) ?? 'null') as Tool) : bytes), [bytes]);
}

function Sheet({ yard, tool }: { readonly yard: Book; readonly tool: Tool }) {
  const say = useOffice();
  const { says, remedy } = useNotice();
  const { figure } = useTrade();
  const { chart, serial } = tool;
  const { certificate } = chart;
  const faults = validateChart(chart, serial);
  return (
    <Section title={say('store.chart-of', { number: certificate.number })}>
      <Facts
        facts={[
          [say('define.calibrated'), certificate.calibrated],
          [say('define.due'), certificate.due],
          [say('define.uncertainty'), `${figure(100 * certificate.uncertainty, 1)} %`],
          [say('define.repeatability'), `${figure(100 * chart.repeatability, 1)} %`],
          ...(certificate.laboratory === undefined ? [] : [[say('store.laboratory'), certificate.laboratory] as const]),
          ...(certificate.reference === undefined ? [] : [[say('store.reference'), certificate.reference] as const]),
          ...(certificate.adapter === undefined ? [] : [[say('store.adapter'), certificate.adapter] as const]),
        ]}
      />
      {faults.map((one) => (
        <Banner key={`${one.code}${JSON.stringify(one.params)}`} level="mind">
          <p>{says(one)}</p>
          <p>{remedy(one)}</p>
        </Banner>
      ))}
      <ChartCurve chart={chart} serial={serial} />
      <SettingTable chart={chart} label={say('define.chart-of', { serial })} notices={faults} />
      {certificate.photo ? <Photo yard={yard} hash={certificate.photo.hash} /> : null}
    </Section>
  );
}

function Withdraw({ yard, serial }: { readonly yard: Book; readonly serial: string }) {
  const say = useOffice();
  const world = useWorld();
  const [reason, setReason] = useState('');
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void yard.record('tool-withdrawn', { tool: serial, reason: reason.trim() }, world?.holder);
      }}
    >
      <Row>
        <Field label={say('store.withdraw-why')}>
          <input value={reason} onChange={(event) => setReason(event.target.value)} />
        </Field>
        <Button kind="stop" type="submit" disabled={reason.trim() === ''}>
          {say('store.withdraw', { serial })}
        </Button>
      </Row>
    </form>
  );
}
