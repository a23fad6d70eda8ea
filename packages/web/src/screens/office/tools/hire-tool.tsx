import { isToolNews, photoEntry, typedToolEntry } from '@clampwright/record';
import { type ReactNode, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import type { Book } from '../../../job/book.ts';
import { recordYard } from '../../../job/record-yard.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { Banner, Button, FileButton, Section, Soft } from '../../../ui/page.tsx';
import { smallPhoto } from '../../../ui/small-photo.ts';
import { useWorld } from '../../../ui/world-context.ts';
import { chartFile, HireChart, type HireChartValue } from './hire-chart.tsx';
import { HIRE_FIELDS, type Hired, type HireField, readHire } from './hire-read.ts';
import { NamedPerson } from './named-person.tsx';
import own from './tools.module.css';

const EMPTY = Object.fromEntries(HIRE_FIELDS.map((field) => [field, field === 'kind' ? 'battery' : ''])) as Hired;
const KINDS = ['battery', 'electric', 'pneumatic', 'hydraulic', 'torque multiplier', 'click wrench'] as const;
const ON_TOOL = ['serial', 'name', 'kind', 'repeatability', 'arm', 'arm-rating', 'across-flats', 'outer-diameter'] as const;
const ON_PAPER = ['number', 'certificate-serial', 'laboratory', 'reference', 'adapter', 'calibrated', 'due', 'uncertainty'] as const;

/** A tool that is new in the yard: its certificate typed as the paper says, photographed, and left for another person to read back. */
export function HireTool({ yard }: { readonly yard: Book }) {
  const say = useOffice();
  const { says, remedy } = useNotice();
  const world = useWorld()!;
  const [, goTo] = useLocation();
  const [typed, setTyped] = useState<Hired>(EMPTY);
  const [chart, setChart] = useState<HireChartValue>();
  const [photo, setPhoto] = useState<{ readonly file: string; readonly bytes: Uint8Array } | 'unread'>();
  const [person, setPerson] = useState<string>();
  const file = useMemo(() => chart && chartFile(chart), [chart]);
  const name = person === undefined ? '' : (yard.nameOf(person) ?? person);
  const read = useMemo(
    () =>
      file && typed.serial !== ''
        ? readHire(typed, { chart: file, photo: photo === 'unread' ? undefined : photo }, name || '?')
        : undefined,
    [typed, file, photo, name],
  );
  const faults = read ? [...read.ofField.values()].flat().length + read.ofChart.length + read.rest.length : 0;
  const known = read?.tool !== undefined && !isToolNews(yard.fold, read.tool);
  const take = async (chosen: File | undefined) => {
    if (!chosen) return;
    const bytes = await smallPhoto(chosen).catch(() => undefined);
    setPhoto(bytes ? { file: `certificate-${typed.serial || 'tool'}.jpg`, bytes } : 'unread');
  };
  const record = async () => {
    const { tool } = read!;
    const picture = tool!.photo;
    await recordYard(world, yard, [...(picture ? [photoEntry(tool!.tool, picture)] : []), typedToolEntry(tool!)], person!);
    goTo(`/office/tools/${encodeURIComponent(tool!.tool.serial)}`);
  };
  const field = (key: HireField) => (
    <Typed key={key} name={key} said={(read?.ofField.get(key) ?? []).map((one) => `${says(one)} ${remedy(one)}`)}>
      {key === 'kind' ? (
        <select value={typed.kind} onChange={(event) => setTyped({ ...typed, kind: event.target.value })}>
          {KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {say(`store.kind-${kind}`)}
            </option>
          ))}
        </select>
      ) : (
        <input
          value={typed[key]}
          type={key === 'calibrated' || key === 'due' ? 'date' : 'text'}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => setTyped({ ...typed, [key]: event.target.value })}
        />
      )}
    </Typed>
  );
  return (
    <>
      <Section title={say('store.hire')}>
        <Soft>{say('store.hire-text')}</Soft>
        <div className={own.form}>{ON_TOOL.map(field)}</div>
      </Section>
      <Section title={say('store.certificate')}>
        <div className={own.form}>{ON_PAPER.map(field)}</div>
        <FileButton label={say('store.field-photo')} accept="image/*" capture="environment" onChosen={([one]) => void take(one)} />
        {photo === 'unread' ? <Banner level="mind">{say('app.photo-unread')}</Banner> : null}
        {photo && photo !== 'unread' ? <Soft>{say('store.photo-taken')}</Soft> : null}
      </Section>
      <Section title={say('define.chart')}>
        <HireChart chart={chart} notices={read?.ofChart ?? []} onChange={setChart} />
        {[...(read?.ofChart ?? []), ...(read?.rest ?? [])].slice(0, 12).map((one) => (
          <p key={`${one.code}${JSON.stringify(one.params)}${one.place?.row}`} className={own.said}>
            {one.place?.row === undefined || one.place.file !== file?.file
              ? ''
              : `${say('store.chart-row', { row: one.place.row, column: one.place.column ?? '' })} `}
            {says(one)} {remedy(one)}
          </p>
        ))}
      </Section>
      <Section title={say('store.typed')}>
        <NamedPerson yard={yard} label={say('store.typed-person')} value={person} onNamed={setPerson} />
        {known ? <Banner level="plain">{say('store.known-already')}</Banner> : null}
        {faults > 0 ? <Banner level="mind">{say('store.faults-left', { count: faults })}</Banner> : null}
        <Button kind="act" disabled={!read?.tool || faults > 0 || person === undefined || known} onClick={() => void record()}>
          {say('store.typed-do')}
        </Button>
        <Soft>{say('store.typed-text')}</Soft>
      </Section>
    </>
  );
}

interface TypedProps {
  readonly name: HireField;
  readonly said: readonly string[];
  readonly children: ReactNode;
}

function Typed({ name, said, children }: TypedProps) {
  const say = useOffice();
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is its child
    <label className={own.typed} data-said={said.length > 0 ? '' : undefined}>
      <span>{say(`store.field-${name}`)}</span>
      {children}
      {said.map((one) => (
        <em key={one}>{one}</em>
      ))}
    </label>
  );
}
