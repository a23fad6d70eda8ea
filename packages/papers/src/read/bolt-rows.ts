import { type Layout, type Notice, notice } from '@clampwright/core';
import type { JointRow } from './joint-row.ts';

/** Rows of single bolts that are alike in all but their position are one subgroup. */
export function likeBolts(rows: readonly JointRow[]): readonly JointRow[] {
  if (!rows.some(({ single }) => single)) return rows;
  const alike = new Map<string, JointRow>();
  for (const row of rows) {
    const key = row.single ? JSON.stringify({ ...row.subgroup, place: undefined }) : `row ${alike.size}`;
    const known = alike.get(key);
    alike.set(key, known ? { ...known, positions: [...known.positions!, ...row.positions!].sort((a, b) => a - b) } : row);
  }
  return [...alike.values()];
}

/** Where each bolt is, when every row gives its own bolt's place; positions that are missing or twice are faults. */
export function layoutOfBolts(tag: string, rows: readonly JointRow[]): { readonly layout?: Layout; readonly notices: readonly Notice[] } {
  const placed = rows.filter((row) => row.spot !== undefined && row.single);
  if (placed.length === 0) return { notices: [] };
  const bolts = new Map(placed.map((row) => [row.positions![0]!, row.spot!]));
  const missing = Array.from({ length: Math.max(...bolts.keys()) }, (_, i) => i + 1).filter((position) => !bolts.has(position));
  if (missing.length > 0 || bolts.size < placed.length || placed.length < rows.length) {
    const twice = placed.filter((row, at) => placed.findIndex((one) => one.positions![0] === row.positions![0]) !== at);
    const at = twice[0] ?? rows.find((row) => row.spot === undefined) ?? placed.at(-1)!;
    const which = twice.length > 0 ? twice.map((row) => row.positions![0]!) : missing;
    return { notices: [notice('bolt-list-uneven', { tag, bolts: which.slice(0, 10).join(', ') || '–' }, at.at('bolt', ''))] };
  }
  return { layout: { kind: 'group', bolts: [...bolts].sort(([a], [b]) => a - b).map(([, spot]) => spot) }, notices: [] };
}
