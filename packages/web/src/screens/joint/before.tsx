import { useState } from 'react';
import { useLocation } from 'wouter';
import { isLookedAt } from '../../job/joint-state.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { isChecked } from '../../job/today.ts';
import { useNotice, useSay, useTrade } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Banner, Button, Facts, Field, LinkButton, Page, Row, Section, Soft } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';
import { HolderLine } from '../holder-line.tsx';
import { AssemblyCheck } from './assembly-check.tsx';
import { Changes } from './changes.tsx';
import { DatumCheck } from './datum-check.tsx';
import { Gaps } from './gaps.tsx';
import { JointDrawing } from './joint-drawing.tsx';

/** A joint: what must be so before its first bolt, in the order a crew comes to it, and where it stands. */
export function BeforeScreen({ state }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const notice = useNotice();
  const { world, book } = useJob();
  const { joint, card, holds, stopped, where, steps } = state;
  const named = world.holder !== undefined;
  const needsSnug = card.checks.some(({ check }) => check === 'snug: firm contact');
  const toolsUnchecked = toolsOf(state).filter((tool) => !isChecked(book, tool));
  const ready =
    named &&
    stopped === undefined &&
    holds.length === 0 &&
    isLookedAt(joint) &&
    (!needsSnug || joint.snug?.passed === true) &&
    toolsUnchecked.length === 0;
  return (
    <Page title={joint.tag ?? joint.joint} back="/">
      <Soft>{card.title}</Soft>
      <Changes state={state} />
      {joint.released.map(({ mention, name, seen }) => (
        <Soft key={mention.entry}>
          {say('joint.hold', { what: seen ?? name })} {say('joint.released', { name: (mention.by && book.nameOf(mention.by)) ?? '' })}
        </Soft>
      ))}
      {stopped ? <Banner level="stop">{say(`stopped.${stopped.why}`, { number: stopped.number })}</Banner> : null}
      {card.reasons.map((reason) => (
        <Banner key={reason.code} level="mind">
          <p>{notice.says(reason)}</p>
          <p>{notice.remedy(reason)}</p>
          {holds.includes(reason) ? <Release state={state} code={reason.code} /> : null}
        </Banner>
      ))}
      <HolderLine />
      {where === 'done' || where === 'signed' ? <Sign state={state} /> : null}
      {steps.length > 0 && (where === 'open' || where === 'held') ? (
        <>
          <Permits state={state} />
          <DatumCheck state={state} disabled={!named} />
          <AssemblyCheck state={state} disabled={!named} />
          {needsSnug ? <SnugCheck state={state} disabled={!named} /> : null}
          {toolsUnchecked.map((tool) => (
            <Section key={tool} title={say('joint.tool-check', { tool })}>
              <Soft>{say('joint.tool-check-text')}</Soft>
              <LinkButton href={`/tool/${encodeURIComponent(tool)}?then=/joint/${joint.joint}`}>
                {say('joint.tool-check', { tool })}
              </LinkButton>
            </Section>
          ))}
          <Section title={say('joint.cautions')}>
            <ul>
              {card.cautions.map((code) => (
                <li key={code} className={css.check}>
                  {trade.caution(code)}
                </li>
              ))}
            </ul>
          </Section>
          {ready ? (
            <LinkButton href={`/joint/${joint.joint}/tighten`} kind="act">
              {say('joint.begin')}
            </LinkButton>
          ) : (
            <Button kind="act" disabled>
              {say('joint.begin')}
            </Button>
          )}
        </>
      ) : null}
      <Gaps state={state} />
      <Findings state={state} />
      <JointDrawing state={state} />
      <Row>
        <LinkButton href={`/joint/${joint.joint}/inspect`}>{say('joint.inspect')}</LinkButton>
        <LinkButton href={`/joint/${joint.joint}/loosen`}>{say('joint.loosen')}</LinkButton>
      </Row>
    </Page>
  );
}

/** Serial numbers that the card's settings belong to, or the tools that took over. */
const toolsOf = ({ joint, card }: OpenJoint): string[] => {
  const planned = card.subgroups.flatMap(({ tightening }) => (tightening?.steps ?? []).flatMap(({ setting }) => setting?.tool ?? []));
  return [...new Set(planned.map((tool) => joint.swaps.findLast(({ from }) => from === tool)?.to ?? tool))];
};

function Permits({ state: { card } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const { permit, zone, hotWorkPermit, gasTest, pressure } = card.permits;
  const told = [
    pressure ? say('joint.pressure') : undefined,
    permit === undefined ? undefined : say('joint.permit', { permit }),
    zone === undefined || zone === 'none' ? undefined : say('joint.zone', { zone }),
    hotWorkPermit === undefined ? undefined : say('joint.hot-work', { permit: hotWorkPermit }),
    gasTest === undefined ? undefined : say('joint.gas-test', { test: gasTest }),
  ].filter((one) => one !== undefined);
  if (told.length === 0) return null;
  return (
    <Section title={say('joint.permits')}>
      <ul>
        {told.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </Section>
  );
}

/** A hold is released by whoever holds the device, who says what was seen. */
function Release({ state: { joint }, code }: { readonly state: OpenJoint; readonly code: string }) {
  const say = useSay();
  const { world, book } = useJob();
  const [seen, setSeen] = useState('');
  const name = world.holder === undefined ? say('who.nobody') : (book.nameOf(world.holder) ?? world.holder);
  const release = () => book.record('point-released', { joint: joint.joint, point: 'hold', name: code, seen: seen.trim() }, world.holder);
  return (
    <>
      <Field label={say('joint.release-seen')}>
        <input value={seen} maxLength={80} autoComplete="off" onChange={(event) => setSeen(event.target.value)} />
      </Field>
      <Button disabled={world.holder === undefined || seen.trim() === ''} onClick={() => void release()}>
        {say('joint.release', { name })}
      </Button>
    </>
  );
}

function SnugCheck({ state: { joint }, disabled }: { readonly state: OpenJoint; readonly disabled: boolean }) {
  const say = useSay();
  const { world, book } = useJob();
  const record = (passed: boolean) => void book.record('snug-checked', { joint: joint.joint, passed }, world.holder);
  return (
    <Section title={say('joint.snug')}>
      {joint.snug?.passed ? <Banner level="fine">{say('joint.snug-yes')}</Banner> : null}
      {joint.snug?.passed === false ? <Banner level="mind">{say('joint.snug-wait')}</Banner> : null}
      {joint.snug?.passed ? null : (
        <Row>
          <Button disabled={disabled} onClick={() => record(true)}>
            {say('joint.snug-yes')}
          </Button>
          <Button disabled={disabled} kind="stop" onClick={() => record(false)}>
            {say('joint.snug-no')}
          </Button>
        </Row>
      )}
    </Section>
  );
}

function Sign({ state: { joint, where } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const trade = useTrade();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const signatures = joint.signatures.map(
    ({ mention, as }) =>
      [
        trade.role(as),
        say('joint.signed', { name: (mention.by && book.nameOf(mention.by)) ?? '', time: trade.moment(mention.at) }),
      ] as const,
  );
  return (
    <Section title={say('joint.all-done')}>
      <Facts facts={signatures} />
      {where === 'signed' ? null : (
        <Button
          kind="act"
          disabled={world.holder === undefined || busy}
          onClick={() => {
            setBusy(true);
            void book.record('joint-signed', { joint: joint.joint, as: 'crew' }, world.holder).then(() => {
              setBusy(false);
              go('/');
            });
          }}
        >
          {say('joint.sign')}
        </Button>
      )}
    </Section>
  );
}

function Findings({ state: { joint } }: { readonly state: OpenJoint }) {
  const say = useSay();
  const { says, remedy } = useNotice();
  if (joint.found.length === 0) return null;
  // what is said of every entry of a device is said once
  const found = new Map(joint.found.map(({ notice }) => [JSON.stringify(notice), notice]));
  return (
    <Section title={say('joint.findings')}>
      {[...found].map(([id, notice]) => (
        <Banner key={id} level="mind">
          <p>{says(notice)}</p>
          <p>{remedy(notice)}</p>
        </Banner>
      ))}
    </Section>
  );
}
