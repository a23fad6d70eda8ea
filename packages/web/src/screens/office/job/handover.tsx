import { useOffice } from '../../../language/office-speech.tsx';
import css from '../../../ui/page.module.css';
import { LinkButton, Section } from '../../../ui/page.tsx';
import { useJob } from '../../../ui/world-context.ts';

/** The handover file of the job, written by the server from what has been sent. */
export function Handover() {
  const say = useOffice();
  const { book } = useJob();
  return (
    <Section title={say('office.handover')}>
      <a className={css.button} href={`/api/v1/books/${book.job}/handover`} download={`${book.job}.handover`}>
        {say('office.handover-get')}
      </a>
      <LinkButton href="/verify">{say('enrol.verify')}</LinkButton>
    </Section>
  );
}
