import { useMemo } from 'react';
import { desk } from '../../../draft/desk.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { planning } from '../../../planning/planning.ts';
import { Soft } from '../../../ui/page.tsx';
import { cellNotices } from '../grid/cell-notices.ts';
import { Grid } from '../grid/grid.tsx';
import { NoticeList } from '../shell/notice-list.tsx';
import { changeCells, csvOf, insertRow, removeRows } from './csv-file.ts';

/** A setting chart as its file stands: gears down and steps across, or a setting a row. */
export function ChartTable({ file, label }: { readonly file: string; readonly label: string }) {
  const say = useOffice();
  const here = useWatched(desk)!;
  const { view } = useWatched(planning);
  const csv = csvOf(here.draft.files.get(file));
  const records = csv?.records;
  const rows = useMemo(() => records?.slice(1).map(({ cells }) => cells) ?? [], [records]);
  const headings = useMemo(() => records?.[0]?.cells ?? [], [records]);
  const said = useMemo(() => view?.notices.filter(({ place }) => place?.file === file) ?? [], [view?.notices, file]);
  const notices = useMemo(() => cellNotices(said, headings), [said, headings]);
  const columns = useMemo(
    () => headings.map((head, at) => ({ key: `${at} ${head}`, head, width: at === 0 ? 120 : Math.max(70, 9 * head.length + 16) })),
    [headings],
  );
  if (!csv)
    return (
      <>
        {said.length === 0 ? <Soft>{say('define.chart-elsewhere', { file })}</Soft> : null}
        <NoticeList notices={said} most={20} />
      </>
    );
  return (
    <>
      <Grid
        label={label}
        columns={columns}
        rows={rows}
        notices={notices}
        height={12}
        onChange={(changes) => changeCells(file, 1, changes)}
        onInsert={(at) => insertRow(file, 1, at)}
        onRemove={(gone) => removeRows(file, 1, gone)}
      />
      <NoticeList notices={said} most={20} />
    </>
  );
}
