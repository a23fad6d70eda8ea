import { changeYaml, type YamlChange } from '@clampwright/papers/edit';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { change, desk } from '../../../draft/desk.ts';
import { type Files, withFiles } from '../../../draft/draft.ts';
import { bytesOfAll } from '../../../draft/take-files.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useNotice } from '../../../language/speech.tsx';
import { planning } from '../../../planning/planning.ts';
import { Banner, Button, Field, FileButton, Row, Section, Soft } from '../../../ui/page.tsx';
import { DropZone } from '../shell/drop-zone.tsx';
import type { emptyChart } from './chart-shapes.ts';
import { ChartTable } from './chart-table.tsx';
import own from './define.module.css';
import { EmptyChart } from './empty-chart.tsx';
import { CERTIFICATE, SOCKETS, TOOL } from './fields.ts';
import { type Path, useYaml } from './use-yaml.ts';
import { YamlForm } from './yaml-form.tsx';
import { YamlTable } from './yaml-table.tsx';

interface ToolEntry {
  readonly serial?: string;
  readonly name?: string;
  readonly chart?: string;
}

/** Tools with certificate, sockets and chart; one at a time. */
export function ToolsPart({ serial }: { readonly serial: string | undefined }) {
  const say = useOffice();
  const yaml = useYaml('tools.yaml');
  const list = (yaml.at(['tools']) as readonly ToolEntry[] | undefined) ?? [];
  const at = Math.max(0, serial === undefined ? 0 : list.findIndex((one) => one?.serial === serial));
  const tool = list[at];
  return (
    <div className={own.tools}>
      <nav aria-label={say('define.part-tools')}>
        <ul className={own.serials}>
          {list.map((one, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a serial number may be empty or stand twice while it is typed
            <li key={index}>
              <Link href={`/office/define/tools/${encodeURIComponent(one?.serial ?? '')}`} aria-current={index === at ? 'page' : undefined}>
                <strong>{one?.serial}</strong>
                <small>{one?.name}</small>
              </Link>
            </li>
          ))}
        </ul>
        <NewTool taken={list.map((one) => one?.serial ?? '')} />
      </nav>
      {tool ? <ToolView key={at} at={at} tool={tool} /> : <Soft>{say('define.no-tools')}</Soft>}
    </div>
  );
}

function ToolView({ at, tool }: { readonly at: number; readonly tool: ToolEntry }) {
  const say = useOffice();
  const { says, remedy } = useNotice();
  const yaml = useYaml('tools.yaml');
  const { view } = useWatched(planning);
  const base: Path = ['tools', at];
  const state = view?.tools.find((one) => one.serial === tool.serial);
  const ofWhole = yaml.saidOf(base);
  return (
    <div>
      {[...ofWhole, ...(state?.notices ?? [])].map((one) => (
        <Banner key={`${one.code}${JSON.stringify(one.params)}`} level="mind">
          <p>{says(one)}</p>
          <p>{remedy(one)}</p>
        </Banner>
      ))}
      <Section title={tool.serial ?? ''}>
        <YamlForm file="tools.yaml" base={base} fields={TOOL} />
      </Section>
      <Section title={say('define.certificate')}>
        <YamlForm file="tools.yaml" base={base} fields={CERTIFICATE} />
      </Section>
      <Section title={say('define.chart')}>
        <Chart at={at} tool={tool} />
      </Section>
      <Section title={say('define.sockets')}>
        <YamlTable label={say('define.sockets')} file="tools.yaml" path={[...base, ...SOCKETS.path]} columns={SOCKETS.columns} />
      </Section>
      <Button kind="stop" onClick={() => yaml.change([{ kind: 'remove', path: base }])}>
        {say('define.remove-tool', { serial: tool.serial ?? '' })}
      </Button>
    </div>
  );
}

/** The chart of a tool: dropped, or typed. */
function Chart({ at, tool }: { readonly at: number; readonly tool: ToolEntry }) {
  const say = useOffice();
  const here = useWatched(desk)!;
  const file = tool.chart;
  const there = file !== undefined && here.draft.files.has(file);
  const put = (name: string, bytes: Uint8Array) =>
    change((files) =>
      withFiles(files, {
        [name]: bytes,
        'tools.yaml': changeYaml(files.get('tools.yaml')!, [{ kind: 'set', path: ['tools', at, 'chart'], value: name }]),
      }),
    );
  const [unread, setUnread] = useState<string>();
  const drop = async (chosen: File | undefined) => {
    const found = await bytesOfAll(chosen ? [chosen] : []);
    setUnread(typeof found === 'string' ? found : undefined);
    if (typeof found === 'string') return;
    for (const [name, bytes] of found) put(chartName(name, tool, here.draft.files), bytes);
  };
  const begin = ({ head, rows }: ReturnType<typeof emptyChart>) =>
    put(
      `charts/${tool.serial ?? `tool-${at + 1}`}.csv`,
      new TextEncoder().encode(`${[head, ...rows].map((cells) => cells.join(',')).join('\n')}\n`),
    );
  return (
    <>
      {there ? (
        <ChartTable file={file} label={say('define.chart-of', { serial: tool.serial ?? '' })} />
      ) : (
        <Soft>{say('define.no-chart')}</Soft>
      )}
      <DropZone className={own.bar} onDropped={(data) => void drop(data.files[0])}>
        <FileButton label={say('define.chart-file')} accept=".csv,.txt,.tsv,.xlsx,.xlsm" onChosen={([one]) => void drop(one)} />
      </DropZone>
      {unread === undefined ? null : <Banner level="mind">{say('desk.unreadable', { file: unread })}</Banner>}
      <details>
        <summary>{say('define.type-chart')}</summary>
        <EmptyChart label={say(there ? 'define.chart-afresh' : 'define.chart-begin')} onBegin={begin} />
      </details>
    </>
  );
}

/** A chart goes where its name is free, or in the place of the tool's own: never over the chart of another. */
function chartName(name: string, { serial, chart }: ToolEntry, files: Files): string {
  const wanted = [`charts/${name}`, `charts/${serial ?? 'tool'} ${name}`];
  return wanted.find((one) => one === chart || !files.has(one)) ?? `charts/${serial ?? 'tool'} ${files.size} ${name}`;
}

/** A tool is its serial number; all else can follow. */
function NewTool({ taken }: { readonly taken: readonly string[] }) {
  const say = useOffice();
  const yaml = useYaml('tools.yaml');
  const [, goTo] = useLocation();
  const [serial, setSerial] = useState('');
  const name = serial.trim();
  const add = () => {
    const value = {
      serial: name,
      name: say('define.tool-unnamed'),
      kind: 'battery',
      repeatability: '4 %',
      certificate: { number: '-', serial: name, calibrated: '', due: '', uncertainty: '1 %' },
      sockets: [],
    };
    yaml.change([{ kind: 'insert', path: ['tools'], at: taken.length, value } satisfies YamlChange]);
    setSerial('');
    goTo(`/office/define/tools/${encodeURIComponent(name)}`);
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <Row>
        <Field label={say('define.new-tool')}>
          <input value={serial} onChange={(event) => setSerial(event.target.value)} />
        </Field>
        <Button type="submit" disabled={name === '' || taken.includes(name)}>
          {say('define.add-tool')}
        </Button>
      </Row>
    </form>
  );
}
