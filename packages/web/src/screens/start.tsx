import { useEffect, useState } from 'react';
import { openDatabase, type World } from '../device/database.ts';
import { enrol } from '../device/enrol.ts';
import { beginPractice } from '../job/practice.ts';
import { useNotice, useSay } from '../language/speech.tsx';
import { Banner, Button, Field, LinkButton, Page, Row, Section, Soft } from '../ui/page.tsx';

interface StartScreenProps {
  readonly world: World;
  readonly onEnrolled: () => void;
  readonly onPractice: () => void;
}

/** A device that belongs to no job yet: it joins one with a code, practises, or verifies a file. */
export function StartScreen({ world, onEnrolled, onPractice }: StartScreenProps) {
  const say = useSay();
  if (world === 'practice') return <BeginPractice onEnrolled={onEnrolled} />;
  return (
    <Page title={say('enrol.title')}>
      {window.isSecureContext ? null : <Banner level="mind">{say('enrol.insecure')}</Banner>}
      <Soft>{say('enrol.text')}</Soft>
      <Join onEnrolled={onEnrolled} />
      <Row>
        <Button onClick={onPractice}>{say('enrol.practice')}</Button>
        <LinkButton href="/verify">{say('enrol.verify')}</LinkButton>
        <LinkButton href="/office">{say('office.title')}</LinkButton>
      </Row>
      <Soft>{say('app.limits')}</Soft>
    </Page>
  );
}

function Join({ onEnrolled }: { readonly onEnrolled: () => void }) {
  const say = useSay();
  const { says } = useNotice();
  const [code, setCode] = useState(scannedCode);
  useEffect(() => {
    // scanned while this page was open already
    const take = () => setCode(scannedCode());
    addEventListener('hashchange', take);
    return () => removeEventListener('hashchange', take);
  }, []);
  const [state, setState] = useState<'waiting' | 'joining' | { readonly why: string }>('waiting');
  const join = async () => {
    setState('joining');
    const enrolled = await enrol(await openDatabase('work'), code.trim());
    if (enrolled.ok) {
      await navigator.storage?.persist?.();
      history.replaceState(null, '', '/');
      onEnrolled();
    } else
      setState({ why: enrolled.notices === 'unreachable' ? say('enrol.unreachable') : enrolled.notices.map((one) => says(one)).join(' ') });
  };
  return (
    <form
      style={{ display: 'grid', gap: '0.9rem' }}
      onSubmit={(event) => {
        event.preventDefault();
        void join();
      }}
    >
      <Field label={say('enrol.code')}>
        <input
          value={code}
          onChange={(event) => setCode(event.target.value)}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          required
        />
      </Field>
      {typeof state === 'object' ? <Banner level="stop">{state.why}</Banner> : null}
      <Button kind="act" type="submit" disabled={state === 'joining' || code.trim() === ''}>
        {say(state === 'joining' ? 'enrol.joining' : 'enrol.join')}
      </Button>
    </form>
  );
}

/** A scanned code comes in the fragment, which no server sees. */
const scannedCode = (): string => decodeURIComponent(/^#join=(.+)$/.exec(location.hash)?.[1] ?? '');

function BeginPractice({ onEnrolled }: { readonly onEnrolled: () => void }) {
  const say = useSay();
  const [busy, setBusy] = useState(false);
  const begin = async () => {
    setBusy(true);
    await beginPractice(await openDatabase('practice'), say('practice.person'));
    onEnrolled();
  };
  return (
    <Page title={say('practice.begin')}>
      <Section title={say('practice.mark')}>
        <Soft>{say('practice.text')}</Soft>
        <Button kind="act" disabled={busy} onClick={() => void begin()}>
          {say(busy ? 'app.loading' : 'practice.begin')}
        </Button>
      </Section>
    </Page>
  );
}
