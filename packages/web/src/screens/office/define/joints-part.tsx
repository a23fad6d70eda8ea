import type { Notice } from '@clampwright/core';
import { JOINT_FIELDS, type JointColumn } from '@clampwright/papers/edit';
import { useMemo, useState } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { change, desk } from '../../../draft/desk.ts';
import { withFiles } from '../../../draft/draft.ts';
import { bytesOfAll } from '../../../draft/take-files.ts';
import { useWatched } from '../../../job/store.ts';
import { useOffice } from '../../../language/office-speech.tsx';
import { useWords } from '../../../language/words.ts';
import { planning, tell } from '../../../planning/planning.ts';
import type { ListHead } from '../../../planning/view.ts';
import css from '../../../ui/page.module.css';
import { Banner, Button, FileButton } from '../../../ui/page.tsx';
import { save } from '../../../ui/save.ts';
import type { At } from '../grid/cells.ts';
import { Grid, type GridColumn, type RowNotices } from '../grid/grid.tsx';
import { NoticeList } from '../shell/notice-list.tsx';
import { Pick } from '../shell/pick.tsx';
import { incoming } from '../start/incoming.ts';
import { addColumn, changeCells, csvOf, insertRow, removeRows } from './csv-file.ts';
import own from './define.module.css';
import { choicesOf, columnOf, headingOf, listFile, widthOf } from './joint-list.ts';

/** The joint list, edited in place; what the reader says of a cell stands at the cell, and in a list below. */
export function JointsPart({ which }: { readonly which: string | undefined }) {
  const say = useOffice();
  const { term } = useWords();
  const [, goToPage] = useLocation();
  const [query] = useSearchParams();
  const here = useWatched(desk)!;
  const { view } = useWatched(planning);
  const [wish, setWish] = useState<At>();
  const [unread, setUnread] = useState<string>();
  const { files } = here.draft;
  const file = listFile(files);
  const bytes = files.get(file);
  const csv = csvOf(bytes);
  // the engine's word on the headings is one edit behind
  const head = view?.list?.file === file ? view.list : undefined;
  const headAt = Math.min(head?.row ?? 1, csv?.records.length ?? 1);
  const choices = useMemo(() => choicesOf(files), [files]);
  const headings = csv?.records[headAt - 1]?.cells;
  const columns = useMemo(
    () =>
      (headings ?? []).map((heading, at): GridColumn => {
        const known = head?.columns[at];
        const field = known?.heading === heading ? known.field : undefined;
        const usual = choices[field as JointColumn];
        return {
          key: `${at} ${heading}`,
          head: heading,
          width: widthOf(field, heading),
          ...(known?.says !== undefined && field !== undefined && meansMore(known.says, heading)
            ? { meaning: `= ${term(known.says)}` }
            : {}),
          ...(usual && usual.length > 0 ? { choices: usual } : {}),
        };
      }),
    [headings, head, choices, term],
  );
  const records = csv?.records;
  const rows = useMemo(() => records?.slice(headAt).map(({ cells }) => cells) ?? [], [records, headAt]);
  const ofList = useMemo(() => view?.notices.filter(({ place }) => place?.file === file) ?? NONE, [view?.notices, file]);
  const notices = useMemo(() => byCell(ofList, headAt, headings ?? []), [ofList, headAt, headings]);
  const [place, column] = [query.get('row'), query.get('column')];
  // biome-ignore lint/correctness/useExhaustiveDependencies: one goes there once, not again after every edit
  const goTo = useMemo(
    () =>
      wish ??
      (place === null
        ? wanted(which, rows, head)
        : placeIn({ row: Number(place), ...(column === null ? {} : { column }) }, headAt, headings ?? [])),
    [wish, which, query, head === undefined],
  );
  if (bytes && !csv)
    return (
      <>
        <Banner level="plain">{say('define.workbook', { file })}</Banner>
        <Button
          kind="act"
          onClick={() => {
            incoming.set({ kind: 'list', name: file, bytes, into: here.draft.id });
            goToPage('/office/list');
          }}
        >
          {say('define.workbook-edit')}
        </Button>
      </>
    );
  const fields = Object.entries(JOINT_FIELDS).map(([field, { says: meaning }]) => [field, term(meaning)] as const);
  const has = new Set(head?.columns.map(({ field }) => field));
  const open = head?.columns.filter(({ heading, field }) => heading !== '' && field === undefined && isAsked(ofList, heading)) ?? [];
  return (
    <>
      {unread === undefined ? null : <Banner level="mind">{say('desk.unreadable', { file: unread })}</Banner>}
      <div className={own.bar}>
        <Pick
          label={say('define.add-column')}
          choices={fields.filter(([field]) => !has.has(field as JointColumn))}
          does={say('pick.add')}
          onPicked={(field) => addColumn(file, headAt, headingOf(field as JointColumn, files))}
        />
        <FileButton
          label={say('define.other-list')}
          accept=".csv,.txt,.tsv,.xlsx,.xlsm,.ifc"
          onChosen={([chosen]) =>
            void bytesOfAll([chosen!]).then((found) => {
              if (typeof found === 'string') return setUnread(found);
              const kind = /\.ifc$/i.test(chosen!.name) ? 'model' : 'list';
              incoming.set({ kind, name: chosen!.name, bytes: found[0]![1], into: here.draft.id });
              return goToPage('/office/list');
            })
          }
        />
        {bytes ? (
          <Button kind="quiet" onClick={() => save(file, bytes)}>
            {say('define.save-list')}
          </Button>
        ) : null}
      </div>
      {open.map(({ heading }) => (
        <Pick
          key={heading}
          label={say('list.means', { heading })}
          choices={[['ignore', say('list.ignore')], ...fields]}
          does={say('pick.apply')}
          onPicked={(means) =>
            void tell([{ heading, means }]).then((mapping) => {
              if (mapping !== undefined) change((before) => withFiles(before, { 'mapping.yaml': new TextEncoder().encode(mapping) }));
            })
          }
        />
      ))}
      <Grid
        label={say('define.part-joints')}
        columns={columns}
        rows={rows}
        notices={notices}
        goTo={goTo}
        onChange={(changes) => changeCells(file, headAt, changes)}
        onInsert={(at) => insertRow(file, headAt, at)}
        onRemove={(gone) => removeRows(file, headAt, gone)}
      />
      {ofList.length > 0 ? (
        <section className={css.section}>
          <h2>{say('define.said', { count: ofList.length })}</h2>
          <NoticeList
            notices={ofList}
            most={MOST_SHOWN}
            place={(one, named) => (
              <button type="button" onClick={() => setWish(placeIn(one.place, headAt, headings ?? []) ?? { row: 0, col: 0 })}>
                {named}
              </button>
            )}
          />
        </section>
      ) : null}
    </>
  );
}

/** Whether a heading is written otherwise than what it means. */
const meansMore = (meaning: string, heading: string): boolean => meaning !== heading.replace(/ [[(].*$/, '');

const NONE: readonly Notice[] = [];
const MOST_SHOWN = 50;

const isAsked = (notices: readonly Notice[], heading: string): boolean =>
  notices.some(({ code, place }) => (code === 'column-unclear' || code === 'column-ignored') && place?.column === heading);

/** The cell that a notice is about; column −1 where it is about the row. */
function placeIn(place: Notice['place'], headAt: number, headings: readonly string[]): At | undefined {
  if (place?.row === undefined || place.row <= headAt) return undefined;
  return { row: place.row - headAt - 1, col: place.column === undefined ? -1 : headings.indexOf(place.column) };
}

function byCell(notices: readonly Notice[], headAt: number, headings: readonly string[]): ReadonlyMap<number, RowNotices> {
  const found = new Map<number, Map<number, Notice[]>>();
  for (const one of notices) {
    const at = placeIn(one.place, headAt, headings);
    if (!at) continue;
    const row = found.get(at.row) ?? new Map<number, Notice[]>();
    row.set(at.col, [...(row.get(at.col) ?? []), one]);
    found.set(at.row, row);
  }
  return found;
}

/** `FB-S1~lot`: the row of a joint, and a column of it. */
function wanted(which: string | undefined, rows: readonly (readonly string[])[], head: ListHead | undefined): At | undefined {
  if (which === undefined || !head) return undefined;
  const [tag, field] = which.split('~');
  const tagAt = columnOf(head, 'tag');
  const row = rows.findIndex((cells) => cells[tagAt] === tag);
  return row < 0 ? undefined : { row, col: field === undefined ? 0 : Math.max(0, columnOf(head, field)) };
}
