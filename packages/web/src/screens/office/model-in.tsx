import type { Notice, Outcome } from '@clampwright/core';
import type { ModelJoint, ReadModel } from '@clampwright/papers';
import { useState } from 'react';
import { useOffice } from '../../language/office-speech.tsx';
import { useNotice } from '../../language/speech.tsx';
import css from '../../ui/page.module.css';
import { Banner, Button, Field, Section, Soft } from '../../ui/page.tsx';
import { save } from '../../ui/save.ts';

/** A building model, read on this device: which bolted joints were understood, what was not, and the joint list of it. */
export function ModelIn() {
  const say = useOffice();
  const [busy, setBusy] = useState(false);
  const [read, setRead] = useState<Outcome<ReadModel>>();
  const open = async (file: File | undefined) => {
    if (!file) return;
    setBusy(true);
    const { readModelHere } = await import('./read-model-here.ts');
    setRead(await readModelHere(new Uint8Array(await file.arrayBuffer()), file.name));
    setBusy(false);
  };
  const list = async (joints: readonly ModelJoint[]) => {
    const { modelJointList } = await import('./read-model-here.ts');
    save('joints.csv', modelJointList(joints));
  };
  return (
    <Section title={say('office.model')}>
      <Field label={say('office.model-file')}>
        <input type="file" accept=".ifc" disabled={busy} onChange={(event) => void open(event.target.files?.[0])} />
      </Field>
      {busy ? <Soft>{say('app.loading')}</Soft> : null}
      {read?.ok ? (
        <>
          <p>
            {read.value.schema}:{' '}
            {say('office.model-read', {
              joints: read.value.joints.length,
              bolts: read.value.joints.reduce((sum, { bolts }) => sum + bolts.length, 0),
            })}
          </p>
          <ul className={css.list}>
            {read.value.joints.map((joint) => (
              <li key={joint.tag} className={css.item}>
                <strong>{joint.tag}</strong>
                <span>
                  {say('today.joint', { bolts: joint.bolts.length, left: joint.bolts.length })}
                  <small>{[...new Set(joint.bolts.map(({ size, grade }) => [size, grade].filter(Boolean).join(' · ')))].join(', ')}</small>
                </span>
              </li>
            ))}
          </ul>
          <Notices notices={read.value.notices} />
          {read.value.joints.length > 0 ? <Button onClick={() => void list(read.value.joints)}>{say('office.model-list')}</Button> : null}
        </>
      ) : null}
      {read?.ok === false ? <Notices notices={read.notices} /> : null}
    </Section>
  );
}

function Notices({ notices }: { readonly notices: readonly Notice[] }) {
  const { says, remedy, whereabouts } = useNotice();
  return notices.map((one) => (
    <Banner key={`${one.code} ${whereabouts(one)} ${JSON.stringify(one.params)}`} level="mind">
      <p>
        {whereabouts(one)} {says(one)}
      </p>
      <p>{remedy(one)}</p>
    </Banner>
  ));
}
