import { label } from '@clampwright/words';
import type { Links } from './links.ts';

export function MissingPage({ links }: { readonly links: Links }) {
  return (
    <>
      <header className="sheet-head">
        <h1>{label('page.not-found')}</h1>
      </header>
      <main id="content">
        <p>{label('page.not-found-text')}</p>
        <p>
          <a href={links.home}>{label('page.back')}</a>
        </p>
      </main>
    </>
  );
}
