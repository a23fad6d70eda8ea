import { type Notice, RULE_SETS } from '@clampwright/core';
import { changeYaml, JOINT_FIELDS } from '@clampwright/papers/edit';
import { type Language, loadWords } from '@clampwright/words';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { change, desk, fileOfEveryDraft, putOnDesk } from '../../../draft/desk.ts';
import { type Files, withFiles } from '../../../draft/draft.ts';
import { emptyDraft } from '../../../draft/new-draft.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useWords } from '../../../language/words.ts';
import type { ReadList } from '../../../planning/engine.ts';
import { engine } from '../../../planning/planning.ts';
import css from '../../../ui/page.module.css';
import { Banner, Button, Field, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import { useSettings } from '../../../ui/settings.ts';
import { listFile } from '../define/joint-list.ts';
import { NoticeList } from '../shell/notice-list.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { incoming } from './incoming.ts';
import own from './list-page.module.css';

/** A list or a model before it is taken: what was understood of it, and what not. */
export function ListPage() {
  const say = useOffice();
  const { term } = useWords();
  const { language } = useSettings();
  const [, goTo] = useLocation();
  const coming = useWatched(incoming);
  const [read, setRead] = useState<Previewed>();
  const [means, setMeans] = useState<Readonly<Record<string, string>>>({});
  const [ruleSet, setRuleSet] = useState('');
  const [model, setModel] = useState<readonly Notice[]>([]);
  useEffect(() => {
    if (!coming) return;
    let asked = true;
    void (async () => {
      const list: Listed = coming.kind === 'model' ? await fromModel(coming.bytes, coming.name) : { ...asList(coming), notices: [] };
      if (!asked) return;
      setModel(list.notices);
      const told = Object.entries(means).map(([heading, mean]) => ({ heading, means: mean }));
      const found =
        list.bytes &&
        (await engine.list(list.bytes, list.file, told, coming.into === undefined ? await fileOfEveryDraft('mapping.yaml') : 'draft'));
      if (asked) setRead(found && list.bytes ? { ...found, of: { file: list.file, bytes: list.bytes } } : 'none');
    })();
    return () => {
      asked = false;
    };
  }, [coming, means]);
  if (!coming)
    return (
      <OfficeShell title={say('list.title')}>
        <LinkButton href="/office">{say('office.page-start')}</LinkButton>
      </OfficeShell>
    );
  if (read === undefined)
    return (
      <OfficeShell title={coming.name}>
        <Soft>{say('app.loading')}</Soft>
      </OfficeShell>
    );
  if (read === 'none' || read.csv === undefined)
    return (
      <OfficeShell title={coming.name}>
        <Banner level="stop">{say('list.none')}</Banner>
        <NoticeList notices={read === 'none' ? model : [...model, ...read.notices]} most={MOST_SHOWN} />
        <LinkButton href="/office">{say('office.page-start')}</LinkButton>
      </OfficeShell>
    );
  const columns = read.head?.columns.filter(({ heading }) => heading !== '') ?? [];
  const lacksRule = !columns.some(({ field }) => field === 'rule') && coming.into === undefined;
  // a letter is no list, until somebody says what its headings mean
  const headless = read.notices.some(({ code }) => code === 'heading-row-missing');
  const { csv } = read;
  const take = async () => {
    const files = {
      'joints.csv': csv,
      ...(read.mapping === undefined ? {} : { 'mapping.yaml': new TextEncoder().encode(read.mapping) }),
    };
    if (coming.into !== undefined && desk.get()?.draft.id === coming.into)
      change((before) => withFiles(before, { ...files, 'job.yaml': namingList(before) }));
    else {
      const fresh = emptyDraft(coming.name.replace(/\.[^.]+$/, ''), say('desk.site-unnamed'));
      const job = changeYaml(fresh.files.get('job.yaml')!, ruleSet === '' ? [] : [{ kind: 'set', path: ['rule-set'], value: ruleSet }]);
      await putOnDesk({ ...fresh, files: withFiles(fresh.files, { ...files, 'job.yaml': job }) });
    }
    incoming.set(undefined);
    goTo('/office/plan');
  };
  return (
    <OfficeShell title={coming.name}>
      <p>
        {say('list.read', {
          joints: read.joints.length,
          bolts: read.joints.reduce((sum, { bolts }) => sum + bolts, 0),
          faults: read.notices.length,
        })}
      </p>
      {lacksRule ? (
        <Field label={say('list.rule-set')} hint={say('list.rule-set-text')}>
          <select value={ruleSet} onChange={(event) => setRuleSet(event.target.value)}>
            <option value="">{say('list.choose')}</option>
            {Object.entries(RULE_SETS).map(([id, { title }]) => (
              <option key={id} value={id}>
                {term(title)}
              </option>
            ))}
          </select>
        </Field>
      ) : null}
      <Row>
        <Button kind="act" disabled={headless || (lacksRule && ruleSet === '')} onClick={() => void take()}>
          {say('list.take')}
        </Button>
        <LinkButton href="/office">{say('list.leave')}</LinkButton>
      </Row>
      <Section title={say('list.columns')}>
        <Soft>{say('list.columns-text')}</Soft>
        <ul className={own.columns}>
          {columns.map(({ heading, says: meaning, field }) => (
            <li key={heading} data-open={field === undefined ? '' : undefined}>
              <strong translate="no">{heading}</strong>
              <label>
                <span className={css.aside}>{say('list.means', { heading })}</span>
                <select value={means[heading] ?? field ?? ''} onChange={(event) => setMeans({ ...means, [heading]: event.target.value })}>
                  {field === undefined && means[heading] === undefined ? <option value="">{say('list.not-understood')}</option> : null}
                  <option value="ignore">{say('list.ignore')}</option>
                  {Object.entries(JOINT_FIELDS).map(([key, one]) => (
                    <option key={key} value={key}>
                      {term(one.says)}
                    </option>
                  ))}
                </select>
              </label>
              <span>{meaning === undefined ? '' : term(meaning)}</span>
            </li>
          ))}
        </ul>
      </Section>
      {read.notices.length + model.length > 0 ? (
        <Section title={say('list.faults')}>
          {read.notices.length > 0 ? (
            <Button onClick={() => void saveMarked(read.of, read.notices, language)}>{say('list.marked')}</Button>
          ) : null}
          <NoticeList notices={[...model, ...read.notices]} most={MOST_SHOWN} />
        </Section>
      ) : null}
      <Section title={say('list.joints')}>
        <ul className={own.joints}>
          {read.joints.slice(0, 300).map(({ tag, bolts }) => (
            <li key={tag}>
              <strong>{tag}</strong> {say('list.bolts', { bolts })}
            </li>
          ))}
        </ul>
      </Section>
    </OfficeShell>
  );
}

const MOST_SHOWN = 60;

/** A list, and the file it was read out of. */
type Previewed = (ReadList & { readonly of: { readonly file: string; readonly bytes: Uint8Array } }) | 'none';

/** A list as a file: out of a model, the one that was made of it. */
interface Listed {
  readonly file: string;
  readonly bytes: Uint8Array | undefined;
  readonly notices: readonly Notice[];
}

/** A job names the sheet of a workbook behind a #. */
const asList = ({ name, bytes }: { readonly name: string; readonly bytes: Uint8Array }) => ({ file: name.replaceAll('#', '-'), bytes });

async function fromModel(bytes: Uint8Array, name: string): Promise<Listed> {
  const { modelJointList, readModelHere } = await import('./read-model-here.ts');
  const read = await readModelHere(bytes, name);
  const file = 'joints.csv';
  if (!read.ok) return { file, bytes: undefined, notices: read.notices };
  const { joints, notices } = read.value;
  return { file, bytes: joints.length === 0 ? undefined : new TextEncoder().encode(modelJointList(joints)), notices };
}

/** The job says that its joints stand in the list that is taken, where they stood in another file. */
const namingList = (files: Files): Uint8Array | undefined => {
  const job = files.get('job.yaml');
  return job && listFile(files) !== 'joints.csv' ? changeYaml(job, [{ kind: 'set', path: ['joints'], value: 'joints.csv' }]) : job;
};

/** A copy of the sheet with every fault at its cell, for whoever wrote the list. */
async function saveMarked(
  { file, bytes }: { readonly file: string; readonly bytes: Uint8Array },
  notices: readonly Notice[],
  language: Language,
) {
  const [{ markedCopy }, words] = await Promise.all([import('@clampwright/papers/out'), loadWords(language)]);
  const copy = await markedCopy(() => bytes, notices, { words });
  if (copy) save(`${file.replace(/\.[^.]+$/, '')}-faults.xlsx`, copy);
}
