import type { Told } from '../entry/kind.ts';
import type { Mention } from './draft.ts';

export const mentionOf = ({ hash, entry, on }: Told): Mention => ({
  entry: hash,
  at: entry.at,
  on,
  device: entry.device,
  ...(entry.by === undefined ? {} : { by: entry.by }),
  ...(entry.paper === undefined ? {} : { paper: entry.paper.card }),
});
