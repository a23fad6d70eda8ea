import type { ReactNode } from 'react';

/** A name and what belongs to it, on one line of the card. */
export function CardLine({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <p className="line">
      <b>{name}</b>
      <span>{children}</span>
    </p>
  );
}
