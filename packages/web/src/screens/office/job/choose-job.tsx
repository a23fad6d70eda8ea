import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, Field, Row } from '../../../ui/page.tsx';
import type { ReadBook } from './use-read-book.ts';

/** Which job to look at, where whoever is signed in may read several and the browser is a device of none. */
export function ChooseJob({ read: { world, jobs, book, choose } }: { readonly read: ReadBook }) {
  const say = useOffice();
  if (world) return null;
  if (jobs.length === 0) return <Banner level="plain">{say('live.no-jobs')}</Banner>;
  return (
    <Row>
      <Field label={say('live.job')}>
        <select value={book?.job ?? ''} onChange={(event) => choose(event.target.value)}>
          <option value="">{say('list.choose')}</option>
          {jobs.map(({ job, title }) => (
            <option key={job} value={job}>
              {title}
            </option>
          ))}
        </select>
      </Field>
    </Row>
  );
}
