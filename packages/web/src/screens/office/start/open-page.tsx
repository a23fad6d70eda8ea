import { unzipFolder } from '@clampwright/papers/edit';
import { hashOf } from '@clampwright/record';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { putOnDesk } from '../../../draft/desk.ts';
import type { Draft, Files } from '../../../draft/draft.ts';
import { readDraft } from '../../../draft/draft-shelf.ts';
import { demoDraft, draftOf } from '../../../draft/new-draft.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, LinkButton, Soft } from '../../../ui/page.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';

/** Where `clampwright show` has the folder that it opens. */
const ARCHIVE = '/folder.zip';

/** Opens the folder that the command line shows: as a draft, which is there again as it was left as long as the folder is the same. */
export function OpenPage() {
  const say = useOffice();
  const [, goTo] = useLocation();
  const [failed, setFailed] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once
  useEffect(() => {
    void (async () => {
      const answer = await fetch(ARCHIVE, { cache: 'no-store' }).catch(() => undefined);
      const archive = answer?.ok ? new Uint8Array(await answer.arrayBuffer()) : undefined;
      const files = archive && unzipFolder(archive);
      if (!archive || !files || typeof files === 'string') return setFailed(true);
      await putOnDesk(await draftFor(archive, files, say('desk.unnamed')));
      return goTo('/office/plan', { replace: true });
    })();
  }, []);
  return (
    <OfficeShell title={say('office.page-start')}>
      {failed ? (
        <>
          <Banner level="mind">{say('desk.no-folder')}</Banner>
          <LinkButton href="/office">{say('office.page-start')}</LinkButton>
        </>
      ) : (
        <Soft>{say('app.loading')}</Soft>
      )}
    </OfficeShell>
  );
}

async function draftFor(archive: Uint8Array, files: Files, unnamed: string): Promise<Draft> {
  const demo = await demoDraft();
  const text = (of: Files) => new TextDecoder().decode(of.get('job.yaml'));
  // the demo is the demo, whoever opens it
  if (text(files) === text(demo.files)) return { ...demo, files };
  const id = `folder-${hashOf(archive)}`;
  const name = /^title: *(.+)$/m.exec(text(files))?.[1] ?? unnamed;
  return (await readDraft(id)) ?? { ...draftOf(name, files), id };
}
