import type { JointPlan, KitItem } from '@clampwright/core';

/** In the order one packs. */
const KINDS: readonly KitItem['kind'][] = ['bolt', 'tool', 'socket', 'feeler gauge', 'gap gauge', 'marker'];

/** What to bring, in the order one packs it; the kind before the text, where the text does not say it. */
export const kitRows = (kit: readonly KitItem[]): { readonly count: number; readonly name: string }[] =>
  [...kit]
    .sort((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind))
    .map(({ kind, text, count }) => ({ count, name: text.includes(kind) ? text : `${kind}: ${text}` }));

/** The kit of several joints together: bolts are added up, a tool or gauge is brought once. */
export function kitOf(joints: readonly Pick<JointPlan, 'kit'>[]): KitItem[] {
  const items = new Map<string, KitItem>();
  for (const item of joints.flatMap(({ kit }) => kit)) {
    const key = `${item.kind}\n${item.text}`;
    const known = items.get(key);
    const count = !known ? item.count : item.kind === 'bolt' ? known.count + item.count : Math.max(known.count, item.count);
    items.set(key, { ...item, count });
  }
  return [...items.values()];
}
