import type { ReactNode } from 'react';
import type { ToldFact } from '../told/fact.ts';

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

/** Facts that papers share, as a page shows them: the leading figure large, the source small beneath. */
export const factsOf = (told: readonly ToldFact[]): Fact[] =>
  told.map(({ name, leading, text, source }) => [
    name,
    <>
      {leading !== undefined && (
        <>
          <strong className="figure">{leading}</strong>{' '}
        </>
      )}
      {text}
      {source !== undefined && <span className="minor">{source}</span>}
    </>,
  ]);
