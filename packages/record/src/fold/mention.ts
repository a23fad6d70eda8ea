import type { Told } from '../entry/kind.ts';
import type { Mention } from './draft.ts';

/** Written field by field: this is made once for every entry of a fold. */
export function mentionOf({ hash, entry: { at, device, by, paper }, on }: Told): Mention {
  const mention: { -readonly [K in keyof Mention]: Mention[K] } = { entry: hash, at, on, device };
  if (by !== undefined) mention.by = by;
  if (paper !== undefined) mention.paper = paper.card;
  return mention;
}
