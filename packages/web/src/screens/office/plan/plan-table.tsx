import type { Verdict as VerdictName } from '@clampwright/core';
import { type MouseEvent, memo, useMemo, useRef, useState } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { useOffice } from '../../../language/office-speech.tsx';
import type { JointRow } from '../../../planning/view.ts';
import { Soft } from '../../../ui/page.tsx';
import { useWindow } from '../grid/use-window.ts';
import css from './plan-table.module.css';
import { Verdict } from './verdict.tsx';

const VERDICTS: readonly VerdictName[] = ['stop', 'attention', 'ready'];
/** What joints can be put together by, and how each is told of a row. */
const GROUPS = {
  verdict: (row: JointRow) => row.verdict,
  rule: (row: JointRow) => row.rule,
  fastener: (row: JointRow) => row.fastener,
  tool: (row: JointRow) => row.tool || '–',
  lot: (row: JointRow) => row.lot || '–',
} as const;
type GroupBy = keyof typeof GROUPS;

const ROW = 46;
/** Places of rows are made so many at a time. */
const SLOTS = 32;
const COLUMNS = ['joint', 'verdict', 'bolts', 'rule', 'preload', 'aim', 'setting', 'tool', 'rounds'] as const;

type Line = { readonly kind: 'group'; readonly name: string; readonly count: number } | { readonly kind: 'row'; readonly row: JointRow };

/** Every joint with its verdict and last setting: filtered, put together, drawn as far as it is seen. */
export function PlanTable({ rows }: { readonly rows: readonly JointRow[] }) {
  const say = useOffice();
  const [query, setQuery] = useSearchParams();
  const [text, setText] = useState('');
  const verdict = query.get('verdict') ?? '';
  const tool = query.get('tool') ?? '';
  const groupBy = (query.get('group') ?? '') as GroupBy | '';
  const set = (key: string, value: string) =>
    setQuery(
      (before) => {
        const next = new URLSearchParams(before);
        if (value === '') next.delete(key);
        else next.set(key, value);
        return next;
      },
      { replace: true },
    );
  const tools = useMemo(() => [...new Set(rows.flatMap((row) => row.tool.split(', ').filter(Boolean)))].sort(), [rows]);
  const lines = useMemo(() => {
    const sought = text.trim().toLowerCase();
    const found = rows.filter(
      (row) =>
        (verdict === '' || row.verdict === verdict) &&
        (tool === '' || row.tool.split(', ').includes(tool)) &&
        (sought === '' ||
          [row.tag, row.title, row.fastener, row.rule, row.lot, row.setting].some((one) => one.toLowerCase().includes(sought))),
    );
    return groupBy === '' ? byVerdict(found).map((row): Line => ({ kind: 'row', row })) : grouped(found, groupBy);
  }, [rows, text, verdict, tool, groupBy]);
  const shownJoints = useMemo(() => new Set(lines.flatMap((line) => (line.kind === 'row' ? [line.row.tag] : []))).size, [lines]);
  const box = useRef<HTMLDivElement>(null);
  const shown = useWindow(box, lines.length, ROW);
  const slots = SLOTS * Math.ceil(Math.max(1, shown.to - shown.from) / SLOTS);
  const [, goTo] = useLocation();
  /** one listener for the links of all rows: a row that comes into sight makes none */
  const follow = (event: MouseEvent) => {
    const link = (event.target as HTMLElement).closest('a');
    if (!link || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    goTo(link.getAttribute('href')!);
  };
  return (
    <>
      <div className={css.filters}>
        <label>
          {say('sheet.find')}
          <input type="search" value={text} onChange={(event) => setText(event.target.value)} />
        </label>
        <label>
          {say('sheet.verdict')}
          <select value={verdict} onChange={(event) => set('verdict', event.target.value)}>
            <option value="">{say('sheet.all')}</option>
            {VERDICTS.map((one) => (
              <option key={one} value={one}>
                {say(`sheet.is-${one}`)}
              </option>
            ))}
          </select>
        </label>
        <label>
          {say('sheet.col-tool')}
          <select value={tool} onChange={(event) => set('tool', event.target.value)}>
            <option value="">{say('sheet.all')}</option>
            {tools.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        </label>
        <label>
          {say('sheet.group')}
          <select value={groupBy} onChange={(event) => set('group', event.target.value)}>
            <option value="">{say('sheet.group-none')}</option>
            {(Object.keys(GROUPS) as GroupBy[]).map((one) => (
              <option key={one} value={one}>
                {say(`sheet.group-${one}`)}
              </option>
            ))}
          </select>
        </label>
        <p role="status">{say('sheet.shown', { count: shownJoints })}</p>
      </div>
      {lines.length === 0 ? <Soft>{say('sheet.none-shown')}</Soft> : null}
      {/* biome-ignore lint/a11y/useSemanticElements: a table of the browser draws all of its rows */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
      <div ref={box} className={css.box} role="table" tabIndex={0} aria-label={say('sheet.joints')} aria-rowcount={lines.length + 1}>
        {/* biome-ignore lint/a11y/useSemanticElements: as above */}
        {/* biome-ignore lint/a11y/useFocusableInteractive: nothing is done with it */}
        <div role="row" className={css.head}>
          {COLUMNS.map((one) => (
            // biome-ignore lint/a11y/useSemanticElements: as above
            // biome-ignore lint/a11y/useFocusableInteractive: as above
            <span key={one} role="columnheader">
              {say(`sheet.col-${one}`)}
            </span>
          ))}
        </div>
        {/* biome-ignore lint/a11y/useSemanticElements: as above */}
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: Enter on a link is a click */}
        <div role="rowgroup" className={css.body} style={{ height: lines.length * ROW }} onClick={follow}>
          {Array.from({ length: Math.max(0, shown.to - shown.from) }, (_, at) => shown.from + at).map((at) => {
            const line = lines[at]!;
            return line.kind === 'group' ? (
              // biome-ignore lint/a11y/useSemanticElements: as above
              // biome-ignore lint/a11y/useFocusableInteractive: as above
              <div
                key={at % slots}
                role="row"
                aria-rowindex={at + 2}
                className={css.group}
                style={{ transform: `translateY(${at * ROW}px)` }}
              >
                {/* biome-ignore lint/a11y/useSemanticElements: as above */}
                {/* biome-ignore lint/a11y/useFocusableInteractive: as above */}
                <span role="rowheader">
                  {groupBy === 'verdict' ? <Verdict verdict={line.name as VerdictName} /> : line.name} · {line.count}
                </span>
              </div>
            ) : (
              // a row that scrolls out of sight lends its place to one that comes in
              <PlanRow key={at % slots} at={at} row={line.row} />
            );
          })}
        </div>
      </div>
    </>
  );
}

const byVerdict = (rows: readonly JointRow[]): readonly JointRow[] =>
  VERDICTS.flatMap((verdict) => rows.filter((row) => row.verdict === verdict));

function grouped(rows: readonly JointRow[], by: GroupBy): Line[] {
  const found = new Map<string, JointRow[]>();
  for (const row of rows) {
    const name = GROUPS[by](row);
    const known = found.get(name);
    if (known) known.push(row);
    else found.set(name, [row]);
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([name, own]): Line[] => [
      { kind: 'group', name, count: new Set(own.map(({ tag }) => tag)).size },
      ...own.map((row): Line => ({ kind: 'row', row })),
    ]);
}

const PlanRow = memo(function PlanRow({ at, row }: { readonly at: number; readonly row: JointRow }) {
  const say = useOffice();
  return (
    // biome-ignore lint/a11y/useSemanticElements: drawn where it is scrolled to
    // biome-ignore lint/a11y/useFocusableInteractive: its link has the focus
    <div
      role="row"
      aria-rowindex={at + 2}
      className={css.row}
      style={{ transform: `translateY(${at * ROW}px)` }}
      data-first={row.first ? '' : undefined}
    >
      {/* biome-ignore lint/a11y/useSemanticElements: as above */}
      {/* biome-ignore lint/a11y/useFocusableInteractive: as above */}
      <span role="rowheader">
        <a href={`/office/plan/${encodeURIComponent(row.tag)}`}>{row.tag}</a>
        <small>{row.title}</small>
      </span>
      <Cell>{row.first ? <Verdict verdict={row.verdict} /> : null}</Cell>
      <Cell>
        {row.bolts}
        {row.fastener === '' ? '' : ` × ${row.fastener}`}
        <small>{row.lot === '' ? '' : say('sheet.lot', { lot: row.lot })}</small>
      </Cell>
      <Cell>{row.first ? row.rule : ''}</Cell>
      <Cell>{row.preload}</Cell>
      <Cell>{row.aim}</Cell>
      <Cell>
        <b>{row.setting}</b>
      </Cell>
      <Cell>{row.tool}</Cell>
      <Cell>{row.first && row.rounds ? say('sheet.rounds', { ours: row.rounds.ours, custom: row.rounds.custom }) : ''}</Cell>
    </div>
  );
});

// biome-ignore lint/a11y/useSemanticElements: as above
const Cell = ({ children }: { readonly children: React.ReactNode }) => <span role="cell">{children}</span>;
