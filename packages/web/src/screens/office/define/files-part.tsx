import { zipFolder } from '@clampwright/papers/edit';
import { useState } from 'react';
import { Link } from 'wouter';
import { change, desk } from '../../../draft/desk.ts';
import { withFiles } from '../../../draft/draft.ts';
import { bytesOfAll } from '../../../draft/take-files.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { planning } from '../../../planning/planning.ts';
import css from '../../../ui/page.module.css';
import { Banner, Button, FileButton, LinkButton, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { NoticeList } from '../shell/notice-list.tsx';
import own from './define.module.css';

const isText = (name: string) => /\.(ya?ml|csv|txt|tsv|md)$/i.test(name);

/** The files of the draft as they lie in a job folder: added, looked at as text, taken away. */
export function FilesPart({ which }: { readonly which: string | undefined }) {
  const say = useOffice();
  const here = useWatched(desk)!;
  const { view } = useWatched(planning);
  const { files, name } = here.draft;
  const bytes = which === undefined ? undefined : files.get(which);
  const said = view?.notices.filter(({ place }) => which === undefined || place?.file === which) ?? [];
  const [told, setSaid] = useState<string>();
  const add = async (chosen: readonly File[]) => {
    const more = await bytesOfAll(chosen);
    if (typeof more === 'string') return setSaid(say('desk.unreadable', { file: more }));
    const replaced = more.map(([file]) => file).filter((file) => files.has(file));
    setSaid(replaced.length === 0 ? undefined : say('define.replaced', { files: replaced.join(', ') }));
    return change((before) => withFiles(before, Object.fromEntries(more)));
  };
  if (which !== undefined && bytes)
    return (
      <>
        <LinkButton href="/office/define/files" kind="quiet">
          {say('define.all-files')}
        </LinkButton>
        <Section title={which}>
          {isText(which) ? (
            <textarea
              key={which}
              className={own.source}
              aria-label={which}
              spellCheck={false}
              defaultValue={new TextDecoder().decode(bytes)}
              onBlur={(event) => {
                const text = event.target.value;
                if (text !== new TextDecoder().decode(bytes))
                  change((before) => withFiles(before, { [which]: new TextEncoder().encode(text) }));
              }}
            />
          ) : (
            <Soft>{say('define.not-text')}</Soft>
          )}
          <div className={own.bar}>
            <Button onClick={() => save(which.split('/').at(-1)!, bytes)}>{say('define.save-file')}</Button>
            <Button kind="quiet" onClick={() => change((before) => withFiles(before, { [which]: undefined }))}>
              {say('define.remove-file')}
            </Button>
          </div>
        </Section>
        <NoticeList notices={said} most={50} />
      </>
    );
  return (
    <>
      <Soft>{say('define.files-text')}</Soft>
      <ul className={css.list}>
        {[...files].map(([file, { length }]) => (
          <li key={file} className={own.bar}>
            <Link href={`/office/define/files/${encodeURIComponent(file)}`}>{file}</Link>
            <small>{Math.max(1, Math.round(length / 1024))} kB</small>
          </li>
        ))}
      </ul>
      {told === undefined ? null : <Banner level="mind">{told}</Banner>}
      <div className={own.bar}>
        <Button onClick={() => save(`${name}.zip`, zipFolder(files))}>{say('desk.zip')}</Button>
        <FileButton label={say('define.add-files')} multiple onChosen={(chosen) => void add(chosen)} />
      </div>
    </>
  );
}
