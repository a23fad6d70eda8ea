import { type ByteSource, bytesOf, type NotVerified, readSections, type Verified, verifyHandover } from '@clampwright/record';
import { useState } from 'react';
import { useNotice, useSay } from '../language/speech.tsx';
import css from '../ui/page.module.css';
import { Banner, Button, Facts, Field, FileButton, Page, Section, Soft } from '../ui/page.tsx';

type State =
  | { readonly kind: 'none' }
  | { readonly kind: 'running'; readonly percent: number }
  | { readonly kind: 'fits'; readonly file: Verified; readonly toldKey: boolean; readonly blob: Blob }
  | { readonly kind: 'misfit'; readonly fault: NotVerified };

const sourceOf = (file: Blob): ByteSource => ({
  size: file.size,
  read: async (offset, length) => new Uint8Array(await file.slice(offset, offset + length).arrayBuffer()),
});

/** Anyone drops a handover file and learns whether every byte of it fits: on this device, without network. */
export function VerifyScreen({ back }: { readonly back: string }) {
  const say = useSay();
  const [file, setFile] = useState<File>();
  const [seen, setSeen] = useState('');
  const [key, setKey] = useState('');
  const [state, setState] = useState<State>({ kind: 'none' });
  const verify = async (blob: Blob) => {
    setState({ kind: 'running', percent: 0 });
    const result = await verifyHandover(sourceOf(blob), {
      ...(seen.trim() === '' ? {} : { seen: `${seen.trim()}\n` }),
      ...(key.trim() === '' ? {} : { key: key.trim() }),
      progress: (done, of) => setState({ kind: 'running', percent: Math.floor((100 * done) / of) }),
    });
    setState(result.ok ? { kind: 'fits', file: result.value, toldKey: key.trim() !== '', blob } : { kind: 'misfit', fault: result.fault });
  };
  return (
    <Page title={say('verify.title')} back={back}>
      <Soft>{say('verify.lead')}</Soft>
      <form
        className={css.section}
        onSubmit={(event) => {
          event.preventDefault();
          if (file) void verify(file);
        }}
      >
        <FileButton label={say('verify.choose')} chosen={file?.name} onChosen={([one]) => setFile(one)} />
        <Field label={say('verify.seen')} hint={say('verify.seen-text')}>
          <textarea rows={4} value={seen} onChange={(event) => setSeen(event.target.value)} spellCheck={false} />
        </Field>
        <Field label={say('verify.key')}>
          <input value={key} onChange={(event) => setKey(event.target.value)} spellCheck={false} autoComplete="off" />
        </Field>
        <Button kind="act" type="submit" disabled={!file || state.kind === 'running'}>
          {state.kind === 'running' ? say('verify.running', { percent: state.percent }) : say('verify.run')}
        </Button>
      </form>
      {state.kind === 'misfit' ? <Misfit fault={state.fault} /> : null}
      {state.kind === 'fits' ? <Fits {...state} /> : null}
      <Section title={say('verify.shows')}>
        <Soft>{say('verify.shows-text')}</Soft>
      </Section>
    </Page>
  );
}

function Misfit({ fault: { byte, reason } }: { readonly fault: NotVerified }) {
  const say = useSay();
  const { says, remedy } = useNotice();
  return (
    <Banner level="stop">
      <h2>{say('verify.no')}</h2>
      <p>{say('verify.no-text')}</p>
      <p>{say('verify.no-byte', { byte })}</p>
      <p>{says(reason)}</p>
      <p>{remedy(reason)}</p>
    </Banner>
  );
}

function Fits({ file, toldKey, blob }: { readonly file: Verified; readonly toldKey: boolean; readonly blob: Blob }) {
  const say = useSay();
  return (
    <>
      <Banner level="fine">
        <h2>{say('verify.yes')}</h2>
        <p>
          {file.title} · {file.site}
        </p>
        <p>{say('verify.yes-text')}</p>
      </Banner>
      <p>{say('verify.entries', { count: file.size })}</p>
      <p>{say('verify.attachments', { count: file.attachments, missing: file.missing.length })}</p>
      {file.seen === undefined ? null : <p>{say('verify.seen-fine', { size: file.seen })}</p>}
      {file.report ? <Button onClick={() => void openReport(blob)}>{say('verify.save-report')}</Button> : null}
      <Section title={say('verify.devices')}>
        {file.devices.map(({ device, entries, unsigned, forked }) => (
          <Facts
            key={device}
            facts={[
              [say('verify.device'), device],
              [say('verify.device-entries'), entries],
              [say('verify.device-unsigned'), unsigned],
              ...(forked ? [[say('verify.device-forked'), say('app.yes')] as const] : []),
            ]}
          />
        ))}
      </Section>
      <Section title={say('verify.log-key')}>
        <p className={css.code}>{file.logKey}</p>
        <Soft>{say(toldKey ? 'verify.key-told' : 'verify.key-own')}</Soft>
      </Section>
      <Section title={say('verify.checkpoint')}>
        <Soft>{say('verify.checkpoint-text')}</Soft>
        <p className={css.code}>{file.checkpoint}</p>
      </Section>
    </>
  );
}

/** The report lies in the file as it is; it is handed to the browser as a file of its own. */
async function openReport(blob: Blob): Promise<void> {
  const source = sourceOf(blob);
  const first = await source.read(0, 200);
  const line = new TextDecoder().decode(first.subarray(0, first.indexOf(10)));
  for await (const section of readSections(source, line)) {
    if (section.name !== 'report') continue;
    const url = URL.createObjectURL(new Blob([(await bytesOf(source, section)) as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }));
    const link = Object.assign(document.createElement('a'), { href: url, download: 'report.pdf' });
    link.click();
    URL.revokeObjectURL(url);
    return;
  }
}
