import { certificateNotices, type Tool } from '@clampwright/core';
import { chartEntry } from '@clampwright/record';
import { useState } from 'react';
import type { Book } from '../../../job/book.ts';
import { recordYard } from '../../../job/record-yard.ts';
import { today } from '../../../job/today.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice, useTrade } from '../../../language/speech.tsx';
import { Banner, Button, Check, Section } from '../../../ui/page.tsx';
import { useWorld } from '../../../ui/world-context.ts';
import { NamedPerson } from './named-person.tsx';
import { Photo } from './photo.tsx';
import { rowsToRead, SettingTable } from './setting-table.tsx';
import { typedCertificate } from './typed-certificate.ts';

interface SecondProps {
  readonly yard: Book;
  /** as it was typed */
  readonly tool: Tool;
  readonly typedBy: string | undefined;
}

/** Another person reads the paper aloud, row by row, against what was typed, and confirms it by name: from then on its settings count. */
export function SecondCheck({ yard, tool, typedBy }: SecondProps) {
  const say = useOffice();
  const { says } = useNotice();
  const { figure } = useTrade();
  const world = useWorld()!;
  const [person, setPerson] = useState<string>();
  const [read, setRead] = useState<ReadonlySet<string>>(new Set());
  const { certificate } = tool.chart;
  const facts = [
    ['serial', `${say('define.serial')} ${certificate.serial}`],
    ['number', `${say('store.certificate')} ${certificate.number}`],
    ['dates', `${say('define.calibrated')} ${certificate.calibrated}, ${say('define.due')} ${certificate.due}`],
    ['uncertainty', `${say('define.uncertainty')} ${figure(100 * certificate.uncertainty, 2)} %`],
  ] as const;
  const wanted = [...facts.map(([key]) => key), ...rowsToRead(tool.chart).map((row) => `row ${row}`)];
  const tick = (key: string, on: boolean) => {
    const next = new Set(read);
    if (on) next.add(key);
    else next.delete(key);
    setRead(next);
  };
  const name = (id: string | undefined) => (id === undefined ? '' : (yard.nameOf(id) ?? id));
  const left = wanted.filter((key) => !read.has(key)).length;
  const said = certificateNotices(typedCertificate(tool, name(typedBy), person && name(person)), tool.serial, today());
  const faults = person === undefined ? said.filter(({ code }) => code !== 'certificate-unchecked') : said;
  return (
    <Section title={say('store.second')}>
      <Banner level="mind">{say('store.second-text', { name: name(typedBy) || say('store.nobody') })}</Banner>
      {certificate.photo ? <Photo yard={yard} hash={certificate.photo.hash} /> : null}
      <div>
        {facts.map(([key, text]) => (
          <Check key={key} label={text} checked={read.has(key)} onChange={(on) => tick(key, on)} />
        ))}
      </div>
      <SettingTable
        chart={tool.chart}
        label={say('define.chart-of', { serial: tool.serial })}
        read={new Set([...read].filter((key) => key.startsWith('row ')).map((key) => key.slice(4)))}
        onRead={(row, on) => tick(`row ${row}`, on)}
      />
      <NamedPerson yard={yard} label={say('store.second-person')} not={typedBy} value={person} onNamed={setPerson} />
      {faults.map((one) => (
        <p key={`${one.code}${JSON.stringify(one.params)}`}>{says(one)}</p>
      ))}
      <Button
        kind="act"
        disabled={person === undefined || left > 0 || faults.length > 0}
        onClick={() => void recordYard(world, yard, [chartEntry(tool)], person!)}
      >
        {left > 0 ? say('store.second-left', { count: left }) : say('store.second-do', { number: certificate.number })}
      </Button>
    </Section>
  );
}
