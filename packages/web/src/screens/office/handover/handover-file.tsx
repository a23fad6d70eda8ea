import { bytesSource, readReport, type Verified, verifyHandover } from '@clampwright/record';
import { apiClient } from '@clampwright/sync';
import { useEffect, useState } from 'react';
import type { Book } from '../../../job/book.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Button, Facts, Row, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { FaultLine } from '../job/fault-line.tsx';
import { type Fault, faultOf, useSession } from '../job/session.ts';
import { SignIn } from '../job/sign-in.tsx';
import type { ReadBook } from '../job/use-read-book.ts';
import own from './handover.module.css';

/** A long log is a long file. */
const patient = apiClient({ server: location.origin, timeoutMs: 15 * 60_000 });

interface Made {
  readonly bytes: Uint8Array;
  readonly file: Verified;
  readonly report: Uint8Array | undefined;
}

/** The handover file: written by the server, verified here before anybody is given it, its report shown as it lies in the file. */
export function HandoverFile({ read }: { readonly read: ReadBook }) {
  const say = useOffice();
  const { session, setAccount } = useSession();
  const book = read.book!;
  const [state, setState] = useState<'none' | 'writing' | 'checking'>('none');
  const [made, setMade] = useState<Made>();
  const [fault, setFault] = useState<Fault>();
  const write = async () => {
    setState('writing');
    setFault(undefined);
    // what this browser recorded belongs into it
    await read.world?.send();
    const answer = await patient('handover', { params: { job: book.job } });
    if (answer.kind !== 'answered') {
      setFault(faultOf(answer));
      return setState('none');
    }
    setState('checking');
    const source = bytesSource(answer.value);
    const checked = await verifyHandover(source);
    if (checked.ok) setMade({ bytes: answer.value, file: checked.value, report: await readReport(source) });
    else setFault([checked.fault.reason]);
    return setState('none');
  };
  if (session.kind === 'out') return <SignIn onSignedIn={setAccount} />;
  return (
    <Section title={say('office.handover')}>
      <Soft>{say('over.file-text')}</Soft>
      <Button kind="act" disabled={state !== 'none'} onClick={() => void write()}>
        {say(state === 'none' ? 'office.handover-get' : state === 'writing' ? 'over.writing' : 'over.checking')}
      </Button>
      <FaultLine fault={fault} />
      {made ? (
        <>
          <Banner level="fine">{say('over.verified', { entries: made.file.size, attachments: made.file.attachments })}</Banner>
          <Unproven file={made.file} book={book} />
          <Row>
            <Button kind="act" onClick={() => save(`${book.job}.handover`, made.bytes)}>
              {say('over.save')}
            </Button>
            {made.report ? <Button onClick={() => save(`${book.job}.pdf`, made.report!)}>{say('over.save-report')}</Button> : null}
          </Row>
          <Facts
            facts={[
              [
                say('over.checkpoint'),
                <code key="root" className={own.root}>
                  {made.file.root}
                </code>,
              ],
            ]}
          />
          {made.report ? <Report bytes={made.report} /> : <Soft>{say('over.no-report')}</Soft>}
        </>
      ) : null}
    </Section>
  );
}

/** What the file holds and nobody has signed for, and what it names and does not hold. */
function Unproven({ file, book }: { readonly file: Verified; readonly book: Book }) {
  const say = useOffice();
  const nameOf = (device: string) => book.fold.state('device', device).name ?? device;
  const unsigned = file.devices.filter((one) => one.unsigned > 0);
  const forked = file.devices.filter((one) => one.forked);
  if (unsigned.length + forked.length + file.missing.length === 0) return null;
  return (
    <Banner level="mind">
      {unsigned.map(({ device, unsigned: count }) => (
        <p key={device}>{say('over.unsigned', { name: nameOf(device), count })}</p>
      ))}
      {forked.map(({ device }) => (
        <p key={device}>{say('over.forked', { name: nameOf(device) })}</p>
      ))}
      {file.missing.length > 0 ? <p>{say('over.attachments-missing', { count: file.missing.length })}</p> : null}
    </Banner>
  );
}

/** The report as it lies in the file. */
function Report({ bytes }: { readonly bytes: Uint8Array }) {
  const say = useOffice();
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return url === undefined ? null : <iframe className={own.report} src={url} title={say('over.report')} />;
}
