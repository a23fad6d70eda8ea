import type { Notice } from '@clampwright/core';
import { idOf, issuePlan, utf8 } from '@clampwright/record';
import { useState } from 'react';
import { stopCode } from '../../job/stop-code.ts';
import { useOffice } from '../../language/office-speech.tsx';
import { useNotice, useTrade } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Banner, Button, Field, Row, Section, Soft } from '../../ui/page.tsx';
import { useJob } from '../../ui/world-context.ts';
import type { PlannedFolder } from './plan-folder.ts';

/** From the files of a job folder to an issued plan: read and planned here, frozen, numbered, hashed, and sent with the next sending. */
export function PlanIssue() {
  const say = useOffice();
  const trade = useTrade();
  const { says, remedy, whereabouts } = useNotice();
  const { world, book } = useJob();
  const [planned, setPlanned] = useState<PlannedFolder>();
  const [notices, setNotices] = useState<readonly Notice[]>([]);
  const [number, setNumber] = useState('');
  const [earlier, setEarlier] = useState<'continue' | 'stop'>('continue');
  const [why, setWhy] = useState('');
  const { plans } = book.fold.state('book', 'book');
  const read = async (files: FileList | null) => {
    if (!files || files.length === 0) return;
    const { planFolder } = await import('./plan-folder.ts');
    const result = planFolder(
      new Map(
        await Promise.all(
          [...files].map(
            async (file) =>
              [file.webkitRelativePath.split('/').slice(1).join('/') || file.name, new Uint8Array(await file.arrayBuffer())] as const,
          ),
        ),
      ),
    );
    setPlanned(result.planned);
    setNotices(result.notices);
  };
  const issue = async () => {
    const { job, plan, valves } = planned!;
    const known = new Map(book.joints().map(({ tag, joint }) => [tag, joint]));
    const issued = issuePlan(job, plan, valves, {
      number: number.trim(),
      jointId: (tag) => known.get(tag) ?? idOf('joint', crypto.getRandomValues(new Uint8Array(16))),
      ...(plans.length === 0 ? {} : { earlier }),
    });
    for (const bytes of issued.attachments) await world.device.attach(book.job, bytes);
    for (const { name } of plan.job.people.filter((one) => !book.fold.ids('person').some((id) => book.nameOf(id) === one.name)))
      await book.record(
        'person-enrolled',
        {
          person: idOf('person', crypto.getRandomValues(new Uint8Array(16))),
          name: await world.device.attach(book.job, utf8(name)),
          roles: ['crew'],
        },
        world.holder,
      );
    for (const { kind, body } of issued.entries) await book.record(kind, body, world.holder);
    await book.refresh();
    setPlanned(undefined);
    void world.send();
  };
  return (
    <Section title={say('office.plan')}>
      <ul className={css.list}>
        {plans.map((one) => (
          <li key={one.number} className={css.section}>
            <p>
              <strong>{say('office.issued', { number: one.number, time: trade.moment(one.mention.at) })}</strong>
            </p>
            <p className={css.code}>{one.hash}</p>
            {one.withdrawn === undefined ? (
              <Row>
                <Field label={say('office.withdraw-why')}>
                  <input value={why} onChange={(event) => setWhy(event.target.value)} />
                </Field>
                <Button
                  kind="stop"
                  disabled={why.trim() === ''}
                  onClick={() =>
                    void book.record('plan-withdrawn', { number: one.number, reason: why.trim() }, world.holder).then(() => world.send())
                  }
                >
                  {say('office.withdraw', { number: one.number })}
                </Button>
              </Row>
            ) : (
              <Banner level="stop">
                <p>{say('today.withdrawn', { number: one.number, reason: one.withdrawn })}</p>
                <p>{say('office.stop-code', { code: stopCode(one.hash) })}</p>
              </Banner>
            )}
          </li>
        ))}
      </ul>
      <Field label={say('office.plan-files')}>
        <input type="file" multiple onChange={(event) => void read(event.target.files)} />
      </Field>
      {notices.map((one) => (
        <Banner key={`${one.code} ${whereabouts(one)}`} level="mind">
          <p>
            {whereabouts(one)} {says(one)}
          </p>
          <p>{remedy(one)}</p>
        </Banner>
      ))}
      {planned ? (
        <>
          <p>
            {say('office.plan-read', {
              joints: planned.plan.sums.joints,
              ready: planned.plan.sums.ready,
              attention: planned.plan.sums.attention,
              stop: planned.plan.sums.stop,
            })}
          </p>
          {planned.plan.sums.stop > 0 ? <Soft>{say('office.plan-stopped')}</Soft> : null}
          <Row>
            <Field label={say('office.plan-number')}>
              <input value={number} onChange={(event) => setNumber(event.target.value)} />
            </Field>
            {plans.length === 0 ? null : (
              <Field label={say('office.plan-earlier')}>
                <select value={earlier} onChange={(event) => setEarlier(event.target.value as typeof earlier)}>
                  <option value="continue">{say('office.plan-continue')}</option>
                  <option value="stop">{say('office.plan-stop')}</option>
                </select>
              </Field>
            )}
            <Button
              kind="act"
              disabled={number.trim() === '' || plans.some((one) => one.number === number.trim()) || world.holder === undefined}
              onClick={() => void issue()}
            >
              {say('office.issue')}
            </Button>
          </Row>
        </>
      ) : null}
    </Section>
  );
}
