import { useEffect, useState } from 'react';
import { desk } from '../../../draft/desk.ts';
import type { DraftHead } from '../../../draft/draft.ts';
import { draftHeads, readDraft } from '../../../draft/draft-shelf.ts';
import { attachmentOf } from '../../../job/attachment-of.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { engine, planning } from '../../../planning/planning.ts';
import type { JointChange } from '../../../planning/view.ts';
import { Banner, Field, Section, Soft } from '../../../ui/page.tsx';
import { useBook, useWorld } from '../../../ui/world-context.ts';
import { NoDraft } from '../shell/no-draft.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { Changes } from './changes.tsx';

/** What is otherwise in the plan in hand than in one that was issued, or in another draft. */
export function ComparePage() {
  const say = useOffice();
  const here = useWatched(desk);
  const { files } = useWatched(planning);
  const world = useWorld();
  const book = useBook();
  const [heads, setHeads] = useState<readonly DraftHead[]>([]);
  const [other, setOther] = useState('');
  const [changes, setChanges] = useState<readonly JointChange[] | 'asking' | 'missing'>();
  useEffect(() => void draftHeads().then(setHeads), []);
  const issued = book?.fold.state('book', 'book').plans ?? [];
  // biome-ignore lint/correctness/useExhaustiveDependencies: another state of the files is another plan
  useEffect(() => {
    if (other === '') return setChanges(undefined);
    let asked = true;
    setChanges('asking');
    const [kind, id] = [other.slice(0, 1), other.slice(1)];
    void (async () => {
      const before = kind === 'd' ? (await readDraft(id))?.files : world && (await attachmentOf(world, book!, id));
      const found = before && (await engine.compare(before));
      if (asked) setChanges(found ?? 'missing');
    })();
    return () => {
      asked = false;
    };
  }, [other, files, book]);
  if (!here) return <NoDraft title={say('office.page-compare')} />;
  return (
    <OfficeShell title={say('office.page-compare')}>
      <Field label={say('diff.with')}>
        <select value={other} onChange={(event) => setOther(event.target.value)}>
          <option value="">{say('list.choose')}</option>
          {issued.map(({ number, hash }) => (
            <option key={hash} value={`p${hash}`}>
              {say('diff.issued', { number })}
            </option>
          ))}
          {heads
            .filter(({ id }) => id !== here.draft.id)
            .map(({ id, name }) => (
              <option key={id} value={`d${id}`}>
                {say('diff.draft', { name })}
              </option>
            ))}
        </select>
      </Field>
      {changes === 'asking' ? <Soft>{say('desk.planning')}</Soft> : null}
      {changes === 'missing' ? <Banner level="mind">{say('diff.missing')}</Banner> : null}
      {Array.isArray(changes) ? (
        <Section title={say('diff.count', { count: changes.length })}>
          <Changes changes={changes} />
        </Section>
      ) : null}
    </OfficeShell>
  );
}
