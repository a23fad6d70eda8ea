import { CUT_OUT_CAUSES, TROUBLES } from '@clampwright/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { currentStep, taskOf } from '../../job/next-bolt.ts';
import type { OpenJoint } from '../../job/open-joint.ts';
import { useSay } from '../../language/speech.tsx';
import { Banner, Button, Field, FileButton, LinkButton, Page, Row, Section, Soft } from '../../ui/page.tsx';
import { smallPhoto } from '../../ui/small-photo.ts';
import { useJob } from '../../ui/world-context.ts';

/** Something else than a bolt done: a short way for each, and what happens next. A cut-out is not a stall. */
export function ElseScreen({ state, bolt }: { readonly state: OpenJoint; readonly bolt: number }) {
  const say = useSay();
  const { world, book } = useJob();
  const [, go] = useLocation();
  const { joint, card, steps } = state;
  const back = `/joint/${joint.joint}/tighten`;
  const step = currentStep(steps)?.step;
  const task = step === undefined ? undefined : taskOf(joint, card, bolt, step);
  const tool = task?.inHand;
  const [what, setWhat] = useState<(typeof TROUBLES)[number]>();
  const [text, setText] = useState('');
  const [unread, setUnread] = useState(false);
  const [next, showNext] = useState<keyof typeof NEXT>();
  const setNext = (what: keyof typeof NEXT) => {
    showNext(what);
    window.scrollTo(0, 0);
  };
  const cutOut = async (cause: (typeof CUT_OUT_CAUSES)[number]) => {
    await book.record('tool-cut-out', { joint: joint.joint, bolt, tool: tool ?? '?', cause }, world.holder);
    setNext('cut-out');
  };
  const trouble = async () => {
    await book.record(
      'bolt-trouble',
      { joint: joint.joint, bolt, what: what!, ...(text.trim() === '' ? {} : { text: text.trim() }) },
      world.holder,
    );
    setNext('trouble');
  };
  const photo = async (file: File | undefined) => {
    if (!file) return;
    const bytes = await smallPhoto(file).catch(() => undefined);
    if (!bytes) return setUnread(true);
    const hash = await world.device.attach(book.job, bytes);
    await book.record('photo-taken', { joint: joint.joint, bolt, photo: hash, type: 'image/jpeg' }, world.holder);
    setNext('photo');
  };
  const otherTool =
    task?.tool === undefined ? null : <LinkButton href={`/joint/${joint.joint}/swap/${bolt}`}>{say('else.swap')}</LinkButton>;
  // what happens next takes the place of what was asked: it cannot be missed, and nothing is told twice
  if (next !== undefined)
    return (
      <Page title={say('tighten.bolt', { bolt })} back={back}>
        <Banner level={next === 'photo' ? 'fine' : 'mind'}>{say(NEXT[next])}</Banner>
        <Button kind="act" onClick={() => go(back)}>
          {say('else.go-on')}
        </Button>
        {next === 'cut-out' && tool !== undefined ? (
          <>
            <Battery tool={tool} />
            {otherTool}
          </>
        ) : null}
      </Page>
    );
  return (
    <Page title={say('else.title', { bolt })} back={back}>
      {tool === undefined ? null : (
        <Section title={say('else.cut-out')}>
          <Soft>{say('else.cut-out-text')}</Soft>
          <Row short>
            {CUT_OUT_CAUSES.map((cause) => (
              <Button key={cause} onClick={() => void cutOut(cause)}>
                {say(`else.cause-${cause}`)}
              </Button>
            ))}
          </Row>
        </Section>
      )}
      {tool === undefined ? null : <Battery tool={tool} />}
      {otherTool}
      <Section title={say('tighten.else')}>
        <Row short>
          {TROUBLES.map((one) => (
            <Button key={one} kind={one === what ? 'act' : 'plain'} aria-pressed={one === what} onClick={() => setWhat(one)}>
              {say(`else.${one}`)}
            </Button>
          ))}
        </Row>
        <Field label={say('else.note')}>
          <input value={text} onChange={(event) => setText(event.target.value)} />
        </Field>
        <Button kind="stop" disabled={what === undefined} onClick={() => void trouble()}>
          {say('else.record')}
        </Button>
      </Section>
      {unread ? <Banner level="mind">{say('app.photo-unread')}</Banner> : null}
      <FileButton label={say('else.photo')} accept="image/*" capture="environment" onChosen={([picture]) => void photo(picture)} />
    </Page>
  );
}

/** What is said once it is recorded. */
const NEXT = { 'cut-out': 'else.cut-out-next', trouble: 'else.next-stop', photo: 'else.photo-kept' } as const;

/** The battery in the tool: what the gauge shows is one press, a change is two. */
function Battery({ tool }: { readonly tool: string }) {
  const say = useSay();
  const { world, book } = useJob();
  const listed = book.jobOf(book.fold.state('book', 'book').plans.at(-1)?.number)?.batteries ?? [];
  const known = new Set([...book.fold.ids('battery'), ...listed.map(({ serial }) => serial)]);
  const batteries = [...known].sort().map((id) => book.fold.state('battery', id));
  const inTool = batteries.find((one) => one.inTool === tool);
  const [name, setName] = useState('');
  const change = (battery: string) =>
    void book.record('battery-changed', { tool, battery, ...(inTool ? { out: inTool.battery } : {}) }, world.holder);
  return (
    <>
      {inTool ? (
        <Section title={`${say('else.gauge')}: ${inTool.battery}`}>
          <Row short>
            {[0, 1, 2, 3, 4].map((bars) => (
              <Button
                key={bars}
                aria-label={`${say('else.gauge-of')} ${bars}`}
                onClick={() => void book.record('gauge-read', { battery: inTool.battery, bars, of: 4 }, world.holder)}
              >
                {bars}
              </Button>
            ))}
          </Row>
          <Soft>{say('else.gauge-when')}</Soft>
          {inTool.readings.length > 0 ? (
            <Soft>{say('today.gauge', { bars: inTool.readings.at(-1)!.bars, of: inTool.readings.at(-1)!.of })}</Soft>
          ) : null}
        </Section>
      ) : null}
      <Section title={say('else.battery')}>
        <Row short>
          {batteries
            .filter((one) => one.inTool === undefined)
            .map(({ battery }) => (
              <Button key={battery} onClick={() => change(battery)}>
                {battery}
              </Button>
            ))}
        </Row>
        <Field label={say('else.battery-in')}>
          <input value={name} onChange={(event) => setName(event.target.value)} autoComplete="off" />
        </Field>
        <Button disabled={name.trim() === ''} onClick={() => change(name.trim())}>
          {say('else.battery')}
        </Button>
      </Section>
    </>
  );
}
