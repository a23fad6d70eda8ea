import { type Joint, type Notice, notice, type Subgroup } from '@clampwright/core';
import { layoutOfBolts, likeBolts } from './bolt-rows.ts';
import type { JointRow } from './joint-row.ts';
import { layoutFrom } from './layout-cells.ts';
import { stated } from './stated.ts';
import type { JointColumn } from './tables/joint-list.ts';

export interface Joined {
  readonly joint?: Joint;
  readonly notices: readonly Notice[];
}

/** One joint from all its rows, whatever their order: what belongs to the joint must not differ between them. */
export function joinRows(tag: string, rows: readonly JointRow[], defaultRule?: string): Joined {
  const groups = likeBolts(rows);
  const sorted = [...groups].sort((a, b) => (a.positions?.[0] ?? 0) - (b.positions?.[0] ?? 0));
  const first = rows.reduce((top, one) => ((one.place.row ?? 0) < (top.place.row ?? 0) ? one : top));
  const { says, notices } = merge(tag, rows);
  const rule = says.rule ?? defaultRule;
  if (rule === undefined) notices.push(notice('cell-empty', { wanted: 'the rule set' }, first.at('rule', '')));
  const boltCount = ringCount(rows);
  const placed = says.layout === undefined ? layoutOfBolts(tag, rows) : { notices: [] };
  notices.push(...placed.notices);
  const layout = placed.layout ?? layoutFrom(says, boltCount);
  if (!layout && placed.notices.length === 0) {
    const wanted =
      says.layout === undefined ? 'the layout (ring or rows × columns), or the flange' : 'how many bolts the ring has, or their positions';
    notices.push(notice('cell-empty', { wanted }, first.at(says.layout === undefined ? 'layout' : 'bolts', '')));
  }
  if (notices.length > 0 || !layout || rule === undefined) return { notices };
  const bolts = layout.kind === 'ring' ? layout.boltCount : layout.bolts.length;
  return {
    notices,
    joint: {
      tag,
      title: says.title ?? '',
      rule,
      layout,
      subgroups: sorted.map((row) => subgroupOf(row, groups.length === 1, bolts)),
      tools: says.tools ?? [],
      toolsAtOnce: says.toolsAtOnce ?? 1,
      pressure: says.pressure ?? (says.flange !== undefined || rule.startsWith('flange')),
      access: stated<Joint['access']>({ reactionPoint: says.reactionPoint, reactionLimit: says.reactionLimit, wall: says.wall }),
      place: first.place,
      ...stated<Pick<Joint, 'edition' | 'sequence' | 'flange' | 'permit' | 'zone' | 'hotWorkPermit' | 'gasTest' | 'datum'>>({
        edition: says.edition,
        sequence: says.sequence,
        flange: says.flange,
        permit: says.permit,
        zone: says.zone,
        hotWorkPermit: says.hotWorkPermit,
        gasTest: says.gasTest,
        datum: datumOf(says),
      }),
    },
  };
}

/** What the rows say together, and where one contradicts another. */
function merge(tag: string, rows: readonly JointRow[]): { readonly says: JointRow['says']; readonly notices: Notice[] } {
  const notices: Notice[] = [];
  const says = new Map<string, unknown>();
  for (const row of rows) {
    for (const [field, value] of Object.entries(row.says)) {
      const known = says.get(field);
      if (known === undefined) says.set(field, value);
      else if (JSON.stringify(known) !== JSON.stringify(value)) {
        const params = { tag, field, first: plain(known), second: plain(value) };
        notices.push(notice('joint-contradicts-itself', params, row.at(field as JointColumn, plain(value))));
      }
    }
  }
  return { says: Object.fromEntries(says) as JointRow['says'], notices };
}

const plain = (value: unknown) =>
  Array.isArray(value) ? value.join(', ') : typeof value === 'object' ? JSON.stringify(value) : String(value);

/**
 * Bolts of a ring: the number given, else the last position. Rows that each give the number of their own subgroup add up to the
 * last position; any other mismatch is left for the plan to report.
 */
function ringCount(rows: readonly JointRow[]): number | undefined {
  const counts = rows.flatMap(({ count }) => (count === undefined ? [] : [count]));
  const last = rows.reduce((most, { positions }) => (positions ?? []).reduce((top, one) => Math.max(top, one), most), 0);
  if (counts.length === 0) return last > 0 ? last : undefined;
  const sum = counts.reduce((total, one) => total + one, 0);
  return rows.length > 1 && sum === last ? last : counts.reduce((most, one) => Math.max(most, one));
}

function subgroupOf({ subgroup, positions, count }: JointRow, alone: boolean, bolts: number): Subgroup {
  const own = positions ?? upTo(count ?? (alone ? bolts : 0));
  return { id: alone || own.length === 0 ? 'all' : `${own[0]}-${own.at(-1)}`, positions: own, ...subgroup };
}

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

const datumOf = ({ boltOne, direction, viewedFrom }: JointRow['says']): Joint['datum'] =>
  boltOne !== undefined && direction !== undefined && viewedFrom !== undefined ? { boltOne, direction, viewedFrom } : undefined;
