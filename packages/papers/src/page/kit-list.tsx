import type { KitItem } from '@clampwright/core';
import { label } from '@clampwright/words';
import { kitRows } from '../told/kit-rows.ts';

/** What to bring. */
export function KitList({ kit }: { readonly kit: readonly KitItem[] }) {
  if (kit.length === 0) return null;
  return (
    <section>
      <h2>{label('kit.title')}</h2>
      <ul className="kit">
        {kitRows(kit).map(({ count, name }) => (
          <li key={name}>
            <span className="count">{count}</span>
            <span>{name}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
