import type { JointPlan, KitItem } from '@clampwright/core';
import { ENGLISH_WORDS, type Words } from '@clampwright/words';

/** In the order one packs. */
const KINDS: readonly KitItem['kind'][] = ['bolt', 'tool', 'socket', 'feeler gauge', 'gap gauge', 'marker'];

/** What to bring, in the order one packs it; the kind before the text, where the text does not say it. */
export const kitRows = (kit: readonly KitItem[], words: Words = ENGLISH_WORDS): { readonly count: number; readonly name: string }[] =>
  [...kit]
    .sort((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind))
    .map(({ kind, text, count }) => {
      const told = itemText(text, words);
      return { count, name: text.includes(kind) ? told : `${words.term(kind)}: ${told}` };
    });

/** The plan tells an item in one English line; what of it is a word is said in the paper’s language. */
const itemText = (text: string, { label, term }: Words): string =>
  term(text)
    .replace(/^(.+) across flats$/, (_, flats: string) => label('joint.flats', { flats }))
    .replace(/, lot (.+)$/, (_, lot: string) => `, ${label('joint.lot', { lot })}`);

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
