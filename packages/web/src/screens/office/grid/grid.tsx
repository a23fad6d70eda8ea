import type { Notice } from '@clampwright/core';
import {
  type ClipboardEvent,
  type KeyboardEvent,
  memo,
  type PointerEvent,
  useEffect,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { useOffice } from '../../../language/office-speech.tsx';
import { Choices } from '../shell/choices.tsx';
import { type At, type CellChange, cellsIn, fromTabbed, pasted, rangeOf, toTabbed } from './cells.ts';
import css from './grid.module.css';
import { GridFoot } from './grid-foot.tsx';
import { moved } from './grid-keys.ts';
import { useWindow } from './use-window.ts';

export interface GridColumn {
  readonly key: string;
  readonly head: string;
  /** what the heading is understood as, where that is not what it says */
  readonly meaning?: string;
  /** px */
  readonly width: number;
  /** what is usually written there */
  readonly choices?: readonly string[];
}

/** Notices of a row by column; −1: of the row as a whole. */
export type RowNotices = ReadonlyMap<number, readonly Notice[]>;

export interface GridProps {
  readonly label: string;
  readonly columns: readonly GridColumn[];
  readonly rows: readonly (readonly string[])[];
  readonly notices?: ReadonlyMap<number, RowNotices>;
  /** cells beyond the last row make new rows */
  readonly onChange: (changes: readonly CellChange[]) => void;
  readonly onInsert: (at: number) => void;
  readonly onRemove: (rows: readonly number[]) => void;
  /** comes into sight and is chosen when it changes */
  readonly goTo?: At | undefined;
  /** rows in sight, at most */
  readonly height?: number;
}

const ROW = 34;
const HEAD = 52;

/** A table that is edited like a spreadsheet: by keyboard throughout, with paste, copy and many rows at once. Long lists are drawn as far as they are seen. */
export function Grid({ label, columns, rows, notices, onChange, onInsert, onRemove, goTo, height = 18 }: GridProps) {
  const say = useOffice();
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const leaving = useRef(false);
  const byMouse = useRef(true);
  const [active, setActive] = useState<At>({ row: 0, col: 0 });
  const [anchor, setAnchor] = useState<At>(active);
  const [editing, setEditing] = useState<string>();
  const last = { row: Math.max(0, rows.length - 1), col: Math.max(0, columns.length - 1) };
  const here = { row: Math.min(active.row, last.row), col: Math.min(active.col, last.col) };
  const range = rangeOf(here, { row: Math.min(anchor.row, last.row), col: Math.min(anchor.col, last.col) });
  const shown = useWindow(box, rows.length, ROW);
  const cell = ({ row, col }: At) => rows[row]?.[col] ?? '';

  const show = ({ row, col }: At) => {
    const frame = box.current;
    if (!frame) return;
    const top = row * ROW;
    if (top < frame.scrollTop) frame.scrollTop = top;
    else if (top + ROW > frame.scrollTop + frame.clientHeight - HEAD - 16) frame.scrollTop = top + ROW - frame.clientHeight + HEAD + 16;
    const left = columns.slice(0, col).reduce((sum, { width }) => sum + width, 0);
    const fixed = col === 0 ? 0 : columns[0]!.width;
    const width = columns[col]?.width ?? 0;
    if (left - fixed < frame.scrollLeft) frame.scrollLeft = left - fixed;
    else if (left + width + NUMBER > frame.scrollLeft + frame.clientWidth)
      frame.scrollLeft = left + width + NUMBER - frame.clientWidth + 16;
  };
  const go = (to: At, extend = false) => {
    const at = { row: Math.max(0, Math.min(to.row, last.row)), col: Math.max(0, Math.min(to.col, last.col)) };
    setActive(at);
    if (!extend) setAnchor(at);
    show(at);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place is another wish; the rest may change at any time
  useEffect(() => {
    if (!goTo) return;
    go(goTo);
    box.current?.focus();
    box.current?.scrollIntoView({ block: 'nearest' });
  }, [goTo]);

  const take = (text: string, fill: boolean) => {
    setEditing(undefined);
    const cells = fill ? cellsIn(range) : [here];
    const changes = cells.filter((at) => cell(at) !== text).map((at) => ({ ...at, text }));
    if (changes.length > 0) onChange(changes);
    box.current?.focus();
  };
  const clear = () => {
    const changes = cellsIn(range).flatMap((at) => (cell(at) === '' ? [] : [{ ...at, text: '' }]));
    if (changes.length > 0) onChange(changes);
  };
  const edit = () => setEditing(cell(here));
  const chooseAll = () => {
    setAnchor({ row: 0, col: 0 });
    setActive(last);
  };
  const fillDown = () =>
    onChange(cellsIn({ ...range, top: range.top + 1 }).map((at) => ({ ...at, text: cell({ row: range.top, col: at.col }) })));
  const alone = (key: string) => (key === 'Enter' || key === 'F2' ? edit : key === 'Delete' || key === 'Backspace' ? clear : undefined);
  const withCtrl = (key: string) => (key === 'a' ? chooseAll : key === 'd' && range.bottom > range.top ? fillDown : undefined);
  const onKey = (event: KeyboardEvent<HTMLDivElement>) => {
    if (editing !== undefined || event.altKey) return;
    const ctrl = event.ctrlKey || event.metaKey;
    const to = moved(event.key, {
      here,
      last,
      ctrl,
      page: Math.max(1, Math.floor(((box.current?.clientHeight ?? 400) - HEAD) / ROW) - 1),
      cell,
    });
    if (to) {
      event.preventDefault();
      return go(to, event.shiftKey);
    }
    if (event.key === 'Tab' && !leaving.current) {
      const next = event.shiftKey ? here.row * columns.length + here.col - 1 : here.row * columns.length + here.col + 1;
      // from the first and the last cell one leaves
      if (next < 0 || next >= rows.length * columns.length) return undefined;
      event.preventDefault();
      return go({ row: Math.floor(next / columns.length), col: next % columns.length });
    }
    if (event.key === 'Escape') {
      leaving.current = true;
      return setAnchor(here);
    }
    const run = ctrl ? withCtrl(event.key.toLowerCase()) : alone(event.key);
    if (run && rows.length > 0) {
      event.preventDefault();
      return run();
    }
    if (event.key === ' ' && event.shiftKey) {
      event.preventDefault();
      setAnchor({ row: here.row, col: 0 });
      return setActive({ row: here.row, col: last.col });
    }
    if (!ctrl && event.key.length === 1 && rows.length > 0) {
      event.preventDefault();
      setEditing(event.key);
    }
    return undefined;
  };
  const copy = (event: ClipboardEvent) => {
    if (editing !== undefined) return;
    const text = Array.from({ length: range.bottom - range.top + 1 }, (_, row) =>
      Array.from({ length: range.right - range.left + 1 }, (_, col) => cell({ row: range.top + row, col: range.left + col })),
    );
    event.clipboardData.setData('text/plain', toTabbed(text));
    event.preventDefault();
    if (event.type === 'cut') clear();
  };
  const paste = (event: ClipboardEvent) => {
    if (editing !== undefined) return;
    event.preventDefault();
    const changes = pasted(
      fromTabbed(event.clipboardData.getData('text/plain')),
      rows.length === 0 ? { top: 0, bottom: 0, left: 0, right: 0 } : range,
    );
    onChange(changes.filter(({ col }) => col < columns.length));
  };
  /** the cell under a pointer, by its id */
  const under = ({ target }: { readonly target: EventTarget }): At | undefined => {
    const [, row, col] = /-(\d+)-(\d+)$/.exec((target as HTMLElement).closest('[role=gridcell]')?.id ?? '') ?? [];
    return row === undefined || editing !== undefined ? undefined : { row: Number(row), col: Number(col) };
  };
  const point = (event: PointerEvent) => {
    const at = under(event);
    byMouse.current = event.pointerType === 'mouse';
    // a finger scrolls; it chooses when it is lifted
    if (!at || event.button !== 0 || !byMouse.current) return;
    setActive(at);
    if (!event.shiftKey) setAnchor(at);
  };
  const over = (event: PointerEvent) => {
    const at = event.buttons === 1 && byMouse.current ? under(event) : undefined;
    if (at) setActive(at);
  };
  const touch = (event: { readonly target: EventTarget }) => {
    const at = byMouse.current ? undefined : under(event);
    if (!at) return;
    // a second touch edits
    if (at.row === here.row && at.col === here.col) edit();
    else go(at);
  };
  const slots = SLOTS * Math.ceil(Math.max(1, shown.to - shown.from) / SLOTS);
  const total = columns.reduce((sum, { width }) => sum + width, NUMBER);
  const cellId = (at: At) => `${id}-${at.row}-${at.col}`;
  return (
    <div className={css.whole}>
      {/* biome-ignore lint/a11y/useSemanticElements: a table of the browser is not edited, and draws all of its rows */}
      <div
        ref={box}
        className={css.box}
        style={{ maxHeight: HEAD + ROW * height + 16, minHeight: HEAD + ROW * Math.min(rows.length + 1, height) }}
        role="grid"
        tabIndex={0}
        aria-label={label}
        aria-rowcount={rows.length + 1}
        aria-colcount={columns.length}
        aria-multiselectable="true"
        aria-activedescendant={rows.length > 0 ? cellId(here) : undefined}
        onKeyDown={onKey}
        onCopy={copy}
        onCut={copy}
        onPaste={paste}
        onFocus={() => {
          leaving.current = false;
        }}
      >
        {/* biome-ignore lint/a11y/useSemanticElements: as above */}
        {/* biome-ignore lint/a11y/useFocusableInteractive: the grid has the focus */}
        <div role="row" className={css.head} style={{ width: total }} aria-rowindex={1}>
          <span role="presentation" className={css.number} />
          {columns.map(({ key, head, meaning, width }, col) => (
            // biome-ignore lint/a11y/useSemanticElements: as above
            // biome-ignore lint/a11y/useFocusableInteractive: as above
            <span key={key} role="columnheader" className={col === 0 ? `${css.heading} ${css.first}` : css.heading} style={{ width }}>
              {head}
              {meaning === undefined ? null : <small>{meaning}</small>}
            </span>
          ))}
        </div>
        {/* biome-ignore lint/a11y/useSemanticElements: as above */}
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: the grid takes the keys */}
        <div
          role="rowgroup"
          className={css.body}
          style={{ height: rows.length * ROW, width: total }}
          onPointerDown={point}
          onPointerOver={over}
          onClick={touch}
          onDoubleClick={(event) => under(event) && edit()}
        >
          {Array.from({ length: Math.max(0, shown.to - shown.from) }, (_, at) => shown.from + at).map((row) => {
            const inside = row >= range.top && row <= range.bottom;
            return (
              <Row
                // a row that scrolls out of sight lends its place to one that comes in: letters change, nothing is made anew
                key={row % slots}
                row={row}
                id={id}
                cells={rows[row] ?? NO_CELLS}
                columns={columns}
                notices={notices?.get(row)}
                from={inside ? range.left : -1}
                to={inside ? range.right : -1}
                active={here.row === row ? here.col : -1}
                editing={here.row === row ? editing : undefined}
                onTake={(text, then, fill) => {
                  take(text, fill);
                  if (then === 'down') go({ row: here.row + 1, col: here.col });
                  if (then === 'right') go({ row: here.row, col: here.col + 1 });
                  if (then === 'left') go({ row: here.row, col: here.col - 1 });
                }}
                onLeave={() => {
                  setEditing(undefined);
                  box.current?.focus();
                }}
              />
            );
          })}
        </div>
      </div>
      <GridFoot
        columns={columns}
        rows={rows}
        range={range}
        here={here}
        notices={notices?.get(here.row)}
        onSet={(text) => onChange(cellsIn(range).map((at) => ({ ...at, text })))}
        onInsert={() => {
          onInsert(rows.length === 0 ? 0 : range.bottom + 1);
          go({ row: rows.length === 0 ? 0 : range.bottom + 1, col: 0 });
          setActive({ row: rows.length === 0 ? 0 : range.bottom + 1, col: 0 });
          setAnchor({ row: rows.length === 0 ? 0 : range.bottom + 1, col: 0 });
          box.current?.focus();
        }}
        onRemove={() => onRemove(Array.from({ length: range.bottom - range.top + 1 }, (_, at) => range.top + at))}
      />
      <p className={css.hint}>{say('grid.hint')}</p>
    </div>
  );
}

const NUMBER = 46;
const SLOTS = 32;
const NO_CELLS: readonly string[] = [];

interface RowProps {
  readonly row: number;
  readonly id: string;
  readonly cells: readonly string[];
  readonly columns: readonly GridColumn[];
  readonly notices: RowNotices | undefined;
  readonly from: number;
  readonly to: number;
  readonly active: number;
  readonly editing: string | undefined;
  readonly onTake: (text: string, then: 'down' | 'right' | 'left' | 'stay', fill: boolean) => void;
  readonly onLeave: () => void;
}

/** What a row looks like; what it does is always the newest. */
const SEEN = ['row', 'cells', 'columns', 'notices', 'from', 'to', 'active', 'editing'] as const;

const Row = memo(
  function Row(props: RowProps) {
    const { row, id, cells, columns, notices, from, to, active, editing } = props;
    const latest = useLatest(props);
    const worst = notices === undefined ? undefined : 'mind';
    return (
      // biome-ignore lint/a11y/useSemanticElements: drawn where it is scrolled to
      // biome-ignore lint/a11y/useFocusableInteractive: the grid has the focus
      <div role="row" className={css.row} style={{ transform: `translateY(${row * ROW}px)`, height: ROW }} aria-rowindex={row + 2}>
        {/* biome-ignore lint/a11y/useSemanticElements: as above */}
        {/* biome-ignore lint/a11y/useFocusableInteractive: as above */}
        <span role="rowheader" className={css.number} data-state={notices?.has(-1) || worst ? 'said' : undefined}>
          {row + 1}
        </span>
        {columns.map(({ key, width, choices }, col) => {
          const said = notices?.get(col);
          return (
            // biome-ignore lint/a11y/useSemanticElements: as above
            // biome-ignore lint/a11y/useFocusableInteractive: as above
            <div
              key={key}
              role="gridcell"
              id={`${id}-${row}-${col}`}
              className={col === 0 ? `${css.cell} ${css.first}` : css.cell}
              style={{ width }}
              aria-selected={col >= from && col <= to}
              aria-invalid={said ? true : undefined}
              data-active={col === active ? '' : undefined}
            >
              {col === active && editing !== undefined ? (
                <CellInput
                  first={editing}
                  whole={editing === (cells[col] ?? '')}
                  label={columns[col]!.head}
                  choices={choices}
                  onTake={(text, then, fill) => latest.current.onTake(text, then, fill)}
                  onLeave={() => latest.current.onLeave()}
                />
              ) : (
                cells[col]
              )}
            </div>
          );
        })}
      </div>
    );
  },
  (before, after) => SEEN.every((key) => before[key] === after[key]),
);

function useLatest(props: RowProps) {
  const latest = useRef(props);
  useLayoutEffect(() => {
    latest.current = props;
  });
  return latest;
}

interface CellInputProps {
  readonly first: string;
  /** the whole text is at hand, not the first letter of another */
  readonly whole: boolean;
  readonly label: string;
  readonly choices: readonly string[] | undefined;
  readonly onTake: RowProps['onTake'];
  readonly onLeave: () => void;
}

function CellInput({ first, whole, label, choices, onTake, onLeave }: CellInputProps) {
  const list = useId();
  const field = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  useEffect(() => {
    field.current?.focus();
    if (whole) field.current?.select();
  }, [whole]);
  const take = (then: Parameters<RowProps['onTake']>[1], fill = false) => {
    if (done.current) return;
    done.current = true;
    onTake(field.current!.value.trim(), then, fill);
  };
  return (
    <>
      <input
        ref={field}
        className={css.input}
        defaultValue={first}
        aria-label={label}
        list={choices ? list : undefined}
        onBlur={() => take('stay')}
        onKeyDown={(event) => {
          event.stopPropagation();
          if (event.key === 'Enter') {
            event.preventDefault();
            take(event.ctrlKey || event.metaKey ? 'stay' : 'down', event.ctrlKey || event.metaKey);
          } else if (event.key === 'Tab') {
            event.preventDefault();
            take(event.shiftKey ? 'left' : 'right');
          } else if (event.key === 'Escape') {
            done.current = true;
            onLeave();
          }
        }}
      />
      <Choices id={list} choices={choices} />
    </>
  );
}
