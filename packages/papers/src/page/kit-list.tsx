import type { KitItem } from '@clampwright/core';
import { label } from '@clampwright/words';

/** What to bring. */
export function KitList({ kit }: { readonly kit: readonly KitItem[] }) {
  if (kit.length === 0) return null;
  return (
    <section>
      <h2>{label('kit.title')}</h2>
      <ul className="kit">
        {[...kit]
          .sort((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind))
          .map(({ kind, text, count }) => (
            <li key={`${kind}${text}`}>
              <span className="count">{count}</span>
              <span>{kitName(kind, text)}</span>
            </li>
          ))}
      </ul>
    </section>
  );
}

/** In the order one packs. */
const KINDS: readonly KitItem['kind'][] = ['bolt', 'tool', 'socket', 'feeler gauge', 'gap gauge', 'marker'];

/** The kind before the text, where the text does not say it. */
const kitName = (kind: KitItem['kind'], text: string) => (text.includes(kind) ? text : `${kind}: ${text}`);
