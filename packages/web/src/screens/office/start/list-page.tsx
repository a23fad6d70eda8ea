import { type Notice, RULE_SETS } from '@clampwright/core';
import { changeYaml, JOINT_FIELDS } from '@clampwright/papers/edit';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { change, desk, putOnDesk } from '../../../draft/desk.ts';
import { withFiles } from '../../../draft/draft.ts';
import { emptyDraft } from '../../../draft/new-draft.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useWords } from '../../../language/words.ts';
import type { ReadList } from '../../../planning/engine.ts';
import { engine } from '../../../planning/planning.ts';
import css from '../../../ui/page.module.css';
import { Banner, Button, Field, LinkButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { NoticeList } from '../shell/notice-list.tsx';
import { OfficeShell } from '../shell/office-shell.tsx';
import { incoming } from './incoming.ts';
import own from './list-page.module.css';

/** A list or a model before it is taken: what was understood of it, and what not. */
export function ListPage() {
  const say = useOffice();
  const { term } = useWords();
  const [, goTo] = useLocation();
  const coming = useWatched(incoming);
  const [read, setRead] = useState<ReadList | 'none'>();
  const [means, setMeans] = useState<Readonly<Record<string, string>>>({});
  const [ruleSet, setRuleSet] = useState('');
  const [model, setModel] = useState<readonly Notice[]>([]);
  useEffect(() => {
    if (!coming) return;
    let asked = true;
    void (async () => {
      const list = coming.kind === 'model' ? await fromModel(coming.bytes, coming.name) : { bytes: coming.bytes, notices: [] };
      if (!asked) return;
      setModel(list.notices);
      const told = Object.entries(means).map(([heading, mean]) => ({ heading, means: mean }));
      const found = list.bytes && (await engine.list(list.bytes, coming.name, told, coming.into !== undefined));
      if (asked) setRead(found ?? 'none');
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
  if (read === 'none')
    return (
      <OfficeShell title={coming.name}>
        <Banner level="stop">{say('list.none')}</Banner>
        <NoticeList notices={model} most={MOST_SHOWN} />
        <LinkButton href="/office">{say('office.page-start')}</LinkButton>
      </OfficeShell>
    );
  const columns = read.head?.columns.filter(({ heading }) => heading !== '') ?? [];
  const lacksRule = !columns.some(({ field }) => field === 'rule') && coming.into === undefined;
  const take = async () => {
    const files = {
      'joints.csv': read.csv,
      ...(read.mapping === undefined ? {} : { 'mapping.yaml': new TextEncoder().encode(read.mapping) }),
    };
    if (coming.into !== undefined && desk.get()?.draft.id === coming.into) change((before) => withFiles(before, files));
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
        <Button kind="act" disabled={lacksRule && ruleSet === ''} onClick={() => void take()}>
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

async function fromModel(
  bytes: Uint8Array,
  name: string,
): Promise<{ readonly bytes: Uint8Array | undefined; readonly notices: readonly Notice[] }> {
  const { modelJointList, readModelHere } = await import('./read-model-here.ts');
  const read = await readModelHere(bytes, name);
  if (!read.ok) return { bytes: undefined, notices: read.notices };
  const { joints, notices } = read.value;
  return { bytes: joints.length === 0 ? undefined : new TextEncoder().encode(modelJointList(joints)), notices };
}
