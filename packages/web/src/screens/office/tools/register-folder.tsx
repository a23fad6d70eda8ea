import { levelOf, type Notice } from '@clampwright/core';
import { type ReadEquipment, readToolStore } from '@clampwright/papers/read';
import {
  batteryEntry,
  chartEntry,
  isBatteryNews,
  isPhotoNews,
  isToolNews,
  photoEntry,
  toolEntry,
  type YardEntry,
} from '@clampwright/record';
import { useState } from 'react';
import { dropped, chosen as filesOf, takeFiles } from '../../../draft/take-files.ts';
import type { Book } from '../../../job/book.ts';
import { recordYard } from '../../../job/record-yard.ts';
import { today } from '../../../job/today.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Banner, Button, FileButton, Section, Soft } from '../../../ui/page.tsx';
import { useWorld } from '../../../ui/world-context.ts';
import { DropZone } from '../shell/drop-zone.tsx';
import { NamedPerson } from './named-person.tsx';
import own from './tools.module.css';

type Taken = Awaited<ReturnType<typeof takeFiles>>;

/** Tools and batteries of a job folder into the book of the yard, only what is new: what `clampwright register` does at the command line. */
export function RegisterFolder({ yard }: { readonly yard: Book }) {
  const say = useOffice();
  const { says, whereabouts } = useNotice();
  const world = useWorld()!;
  const [read, setRead] = useState<ReadEquipment | 'other'>();
  const [person, setPerson] = useState<string>();
  const [done, setDone] = useState<number>();
  const take = (taken: Taken) => {
    setDone(undefined);
    if (taken?.kind !== 'folder') return setRead('other');
    return setRead(readToolStore((path) => taken.files.get(path) ?? 'missing', 'tools.yaml', today()));
  };
  const entries = typeof read === 'object' ? freshEntries(read, yard) : [];
  const faults: readonly Notice[] = typeof read === 'object' ? read.notices : [];
  const blocked = faults.some(({ code }) => levelOf(code) === 'fault');
  const record = async () => {
    await recordYard(world, yard, entries, person!);
    setDone(entries.length);
    setRead(undefined);
  };
  return (
    <Section title={say('store.register')}>
      <DropZone className={own.drop} onDropped={(data) => void dropped(data).then(takeFiles).then(take)}>
        <p>{say('store.register-text')}</p>
        <FileButton label={say('store.register-choose')} multiple onChosen={(files) => void takeFiles(filesOf(files)).then(take)} />
      </DropZone>
      {read === 'other' ? <Banner level="mind">{say('store.register-other')}</Banner> : null}
      {faults.slice(0, 12).map((one) => (
        <p key={`${one.code} ${whereabouts(one)}`} className={own.said}>
          {whereabouts(one)} {says(one)}
        </p>
      ))}
      {typeof read === 'object' ? (
        <>
          <ul>
            {entries.map((one) => (
              <li key={`${one.kind}${JSON.stringify(one.body)}`}>{entryText(one, say)}</li>
            ))}
          </ul>
          {entries.length === 0 ? (
            <Soft>{say('store.register-known')}</Soft>
          ) : (
            <>
              <NamedPerson yard={yard} label={say('store.register-person')} value={person} onNamed={setPerson} />
              <Button kind="act" disabled={blocked || person === undefined} onClick={() => void record()}>
                {say('store.register-do', { count: entries.length })}
              </Button>
            </>
          )}
        </>
      ) : null}
      {done === undefined ? null : <Banner level="fine">{say('store.register-done', { count: done })}</Banner>}
    </Section>
  );
}

const freshEntries = ({ equipment, batteries }: ReadEquipment, { fold }: Book): YardEntry[] => [
  ...equipment.filter((one) => isToolNews(fold, one)).flatMap((one) => [toolEntry(one), chartEntry(one.tool)]),
  ...equipment.filter((one) => isPhotoNews(fold, one)).map(({ tool, photo }) => photoEntry(tool, photo!)),
  ...batteries.filter((one) => isBatteryNews(fold, one)).map(batteryEntry),
];

function entryText(one: YardEntry, say: ReturnType<typeof useOffice>): string {
  switch (one.kind) {
    case 'tool-registered':
      return say('store.entry-tool', { tool: one.body.tool, certificate: one.body.certificate, due: one.body.due });
    case 'chart-loaded':
      return say('store.entry-chart', { tool: one.body.tool });
    case 'imported':
      return say('store.entry-photo', { name: one.body.name });
    case 'battery-registered':
      return say('store.entry-battery', { battery: one.body.battery, name: one.body.name });
  }
}
