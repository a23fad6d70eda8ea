import type { ReactNode } from 'react';

export type Fact = readonly [name: string, value: ReactNode] | undefined | false;

/** Names and values, as on a data sheet; what is not known has no line. */
export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="facts">
      {facts.map(
        (fact) =>
          fact && (
            <div key={fact[0]}>
              <dt>{fact[0]}</dt>
              <dd>{fact[1]}</dd>
            </div>
          ),
      )}
    </dl>
  );
}
