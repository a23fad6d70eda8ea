import type { Notice } from '@clampwright/core';
import { csvText } from '@clampwright/papers/edit';
import { utf8 } from '@clampwright/record';
import { useMemo, useState } from 'react';
import { bytesOfAll } from '../../../draft/take-files.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { Banner, FileButton, Soft } from '../../../ui/page.tsx';
import { EmptyChart } from '../define/empty-chart.tsx';
import { cellNotices } from '../grid/cell-notices.ts';
import type { CellChange } from '../grid/cells.ts';
import { Grid } from '../grid/grid.tsx';
import { DropZone } from '../shell/drop-zone.tsx';
import own from './tools.module.css';

/** A chart that is typed, or a file that is taken as it is. */
export type HireChartValue =
  | { readonly kind: 'typed'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  | { readonly kind: 'file'; readonly file: string; readonly bytes: Uint8Array };

/** The file that it is read from. A decimal comma wants another separator. */
export function chartFile(chart: HireChartValue): { readonly file: string; readonly bytes: Uint8Array } {
  if (chart.kind === 'file') return chart;
  const rows = [chart.head, ...chart.rows.filter((cells) => cells.some((cell) => cell.trim() !== ''))];
  const separator = rows.flat().some((cell) => /\d,\d/.test(cell)) ? ';' : ',';
  const quoted = (cell: string) => (/[",;\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  return { file: 'chart.csv', bytes: utf8(`${rows.map((cells) => cells.map(quoted).join(separator)).join('\n')}\n`) };
}

interface ChartProps {
  readonly chart: HireChartValue | undefined;
  readonly notices: readonly Notice[];
  readonly onChange: (chart: HireChartValue) => void;
}

/** The certificate's table: typed into a grid, pasted from a spreadsheet, or dropped as CSV or XLSX. */
export function HireChart({ chart, notices, onChange }: ChartProps) {
  const say = useOffice();
  const [unread, setUnread] = useState<string>();
  const take = async (file: File | undefined) => {
    const found = await bytesOfAll(file ? [file] : []);
    setUnread(typeof found === 'string' ? found : undefined);
    if (!file || typeof found === 'string') return;
    const bytes = found[0]![1];
    const records = /\.(csv|txt|tsv)$/i.test(file.name)
      ? csvText(bytes)
          ?.records.map(({ cells }) => cells)
          .filter(({ length }) => length > 0)
      : undefined;
    onChange(
      records && records.length > 1
        ? { kind: 'typed', head: records[0]!, rows: records.slice(1) }
        : { kind: 'file', file: file.name, bytes },
    );
  };
  const typed = chart?.kind === 'typed' ? chart : undefined;
  const columns = useMemo(
    () => typed?.head.map((head, at) => ({ key: `${at} ${head}`, head, width: at === 0 ? 130 : Math.max(72, 9 * head.length + 16) })) ?? [],
    [typed?.head],
  );
  const marked = useMemo(() => cellNotices(notices, typed?.head ?? []), [notices, typed?.head]);
  const change = (changes: readonly CellChange[]) => {
    if (!typed) return;
    const rows = typed.rows.map((cells) => [...cells]);
    for (const { row, col, text } of changes) {
      while (rows.length <= row) rows.push(typed.head.map(() => ''));
      rows[row]![col] = text;
    }
    onChange({ ...typed, rows });
  };
  return (
    <>
      {chart === undefined || chart.kind === 'file' ? (
        <>
          <Soft>{chart ? say('define.chart-elsewhere', { file: chart.file }) : say('define.no-chart')}</Soft>
          <EmptyChart label={say('define.chart-begin')} onBegin={(begun) => onChange({ kind: 'typed', ...begun })} />
        </>
      ) : (
        <Grid
          label={say('define.chart')}
          columns={columns}
          rows={chart.rows}
          notices={marked}
          height={10}
          onChange={change}
          onInsert={(at) =>
            onChange({
              ...chart,
              rows: chart.rows.toSpliced(
                at,
                0,
                chart.head.map(() => ''),
              ),
            })
          }
          onRemove={(gone) => onChange({ ...chart, rows: chart.rows.filter((_, row) => !gone.includes(row)) })}
        />
      )}
      {unread === undefined ? null : <Banner level="mind">{say('desk.unreadable', { file: unread })}</Banner>}
      <DropZone className={own.drop} onDropped={(data) => void take(data.files[0])}>
        <FileButton label={say('define.chart-file')} accept=".csv,.txt,.tsv,.xlsx,.xlsm" onChosen={([one]) => void take(one)} />
      </DropZone>
    </>
  );
}
