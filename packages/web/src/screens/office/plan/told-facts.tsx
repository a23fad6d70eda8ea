import type { ToldFact } from '@clampwright/papers/screen';
import { Facts } from '../../../ui/page.tsx';
import css from './joint-page.module.css';

/** Facts as the papers tell them: the leading figure first, the source beneath. */
export const ToldFacts = ({ facts }: { readonly facts: readonly ToldFact[] }) => (
  <Facts
    facts={facts.map(({ name, leading, text, source }) => [
      name,
      <span key={name}>
        {leading === undefined ? null : <b>{leading} </b>}
        {text}
        {source === undefined ? null : <small className={css.source}>{source}</small>}
      </span>,
    ])}
  />
);
