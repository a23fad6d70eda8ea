import type { KitItem, SubgroupPlan } from './plan.ts';

/** What to bring for one joint: bolts by size, length and lot, the socket, the tools, gauges and a marker where the method needs them. */
export function kitOf(subgroups: readonly SubgroupPlan[], pressure: boolean): KitItem[] {
  const items: KitItem[] = [];
  const ends = new Set<string>();
  for (const one of subgroups) {
    const length = one.length === undefined ? '' : ` × ${Math.round(one.length * 10) / 10} mm`;
    const lot = one.lot === undefined ? '' : `, lot ${one.lot}`;
    const system = one.system === 'plain' ? '' : `${one.system} `;
    items.push({ kind: 'bolt', text: `${system}${one.size}${length}, ${one.grade}${lot}`, count: one.positions.length });
    if (one.acrossFlats !== undefined)
      items.push({ kind: 'socket', text: `${Math.round(one.acrossFlats * 10) / 10} mm across flats`, count: 1 });
    for (const { setting, end } of one.tightening?.steps ?? []) {
      ends.add(end.kind);
      if (setting) items.push({ kind: 'tool', text: setting.tool, count: 1 });
    }
  }
  if (ends.has('feeler refused')) items.push({ kind: 'feeler gauge', text: 'feeler gauge', count: 1 });
  items.push({ kind: 'marker', text: ends.has('mark at angle') ? 'marker and angle gauge' : 'marker', count: 1 });
  if (pressure) items.push({ kind: 'gap gauge', text: 'gap gauge', count: 1 });
  return merge(items, (item) => item.kind === 'bolt');
}

/** One line for each thing; bolts add up, a tool or socket is brought once. */
export function merge(items: Iterable<KitItem>, adds: (item: KitItem) => boolean): KitItem[] {
  const lines = new Map<string, KitItem>();
  for (const item of items) {
    const key = `${item.kind}/${item.text}`;
    const known = lines.get(key);
    lines.set(key, known && adds(item) ? { ...known, count: known.count + item.count } : (known ?? item));
  }
  return [...lines.values()];
}
