import { kitRows } from '@clampwright/papers/screen';
import { dayLines } from '@clampwright/words';
import { desk } from '../../../draft/desk.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { useWords } from '../../../language/words.ts';
import { planning } from '../../../planning/planning.ts';
import { Banner, LinkButton, Section, Soft } from '../../../ui/page.tsx';
import { NoDraft } from '../shell/no-draft.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { FixFirst } from './fix-first.tsx';
import css from './plan-page.module.css';
import { PlanTable } from './plan-table.tsx';
import { ReadNotices } from './read-notices.tsx';

/** The whole plan: what to fix first, every joint, tools, the day, what to bring. */
export function PlanPage() {
  const say = useOffice();
  const { says, remedy, whereabouts } = useNotice();
  const words = useWords();
  const here = useWatched(desk);
  const { view, failed } = useWatched(planning);
  if (!here) return <NoDraft title={say('office.page-plan')} />;
  if (failed !== undefined || !view)
    return (
      <OfficeShell title={say('office.page-plan')}>
        {failed === undefined ? <Soft>{say('desk.planning')}</Soft> : <Banner level="stop">{failed}</Banner>}
      </OfficeShell>
    );
  const { job, sums, rows, toMend, tools, notices } = view;
  if (!job || !sums)
    return (
      <OfficeShell title={say('office.page-plan')}>
        <Banner level="stop">{say('sheet.no-job')}</Banner>
        {notices.map((one) => (
          <p key={`${one.code} ${whereabouts(one)}`}>
            {whereabouts(one)} {says(one)} <strong>{remedy(one)}</strong>
          </p>
        ))}
        <LinkButton href="/office/define/files">{say('define.part-files')}</LinkButton>
      </OfficeShell>
    );
  return (
    <OfficeShell title={job.title} wide>
      <p>{say('sheet.of', { site: job.site, date: job.workDate, joints: sums.joints, bolts: sums.bolts })}</p>
      {notices.length > 0 ? <ReadNotices notices={notices} /> : null}
      {sums.joints === 0 ? (
        <Banner level="plain">
          <p>{say('sheet.no-joints')}</p>
          <LinkButton href="/office/define">{say('office.page-define')}</LinkButton>
        </Banner>
      ) : null}
      <FixFirst things={toMend} />
      <Section title={say('sheet.joints')}>
        <PlanTable rows={rows} />
      </Section>
      <div className={css.beside}>
        <Section title={say('sheet.day')}>
          <ul className={css.lines}>
            {dayLines({ sums }, words).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Section>
        <Section title={say('sheet.tools')}>
          <ul className={css.lines}>
            {tools.map(({ serial, name, certificate, due, notices: said }) => (
              <li key={serial}>
                <strong>{serial}</strong> {name}
                <small>{say('sheet.certificate', { number: certificate, due })}</small>
                {said.map((one) => (
                  <em key={one.code}>{says(one)}</em>
                ))}
              </li>
            ))}
          </ul>
        </Section>
        <Section title={say('sheet.kit')}>
          <ul className={css.lines}>
            {kitRows(sums.kit, words).map(({ name, count }) => (
              <li key={name}>
                {count} × {name}
              </li>
            ))}
          </ul>
        </Section>
      </div>
      <Soft>{say('app.limits')}</Soft>
    </OfficeShell>
  );
}
