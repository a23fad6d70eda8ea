import { type LabelKey, label } from '@clampwright/words';
import { documentHtml } from './document.tsx';

/** What the page tells of the yard's authority. */
export interface Trust {
  /** SHA-256 in pairs of digits */
  readonly fingerprint: string;
  /** civil date */
  readonly until: string;
  /** what it was made for, besides private names */
  readonly names: readonly string[];
  readonly certificate: string;
  /** addresses that open without a warning once it is trusted */
  readonly tries: readonly string[];
  readonly style: string;
}

const SYSTEMS: readonly { readonly name: LabelKey; readonly steps: readonly LabelKey[] }[] = [
  { name: 'trust.android', steps: ['trust.android-1', 'trust.android-2'] },
  { name: 'trust.ios', steps: ['trust.ios-1', 'trust.ios-2'] },
  { name: 'trust.laptop', steps: ['trust.laptop-1'] },
];

/** Walks a device through trusting the yard's own authority. */
export const trustHtml = ({ fingerprint, until, names, certificate, tries, style }: Trust): string =>
  documentHtml({
    title: label('trust.title'),
    style: { href: style },
    mark: 'clampwright-page',
    children: (
      <>
        <header className="sheet-head">
          <h1>{label('trust.title')}</h1>
          <p className="lead">{label('trust.why')}</p>
        </header>
        <main id="content">
          <section>
            <h2>1. {label('trust.compare')}</h2>
            <p className="method">{label('trust.compare-text')}</p>
            <p className="order">{fingerprint}</p>
          </section>
          <section>
            <h2>2. {label('trust.get')}</h2>
            <p className="action">
              <a href={certificate}>{label('trust.get-link')}</a>
            </p>
          </section>
          <section>
            <h2>3. {label('trust.install')}</h2>
            <p className="method">{label('trust.install-text')}</p>
            {SYSTEMS.map(({ name, steps }) => (
              <details key={name}>
                <summary>{label(name)}</summary>
                <ol className="cautions">
                  {steps.map((step) => (
                    <li key={step}>{label(step)}</li>
                  ))}
                </ol>
              </details>
            ))}
          </section>
          <section>
            <h2>4. {label('trust.try')}</h2>
            <p>{label('trust.try-text')}</p>
            <ul className="cautions">
              {tries.map((address) => (
                <li key={address}>
                  <a href={address}>{address}</a>
                </li>
              ))}
            </ul>
          </section>
          <section>
            <h2>{label('trust.limits')}</h2>
            <p className="method">{label('trust.limits-text', { names: names.join(', '), until })}</p>
            <p className="method">{label('trust.undo')}</p>
          </section>
        </main>
      </>
    ),
  });

/** What a device sees that trusts the yard. */
export const trustedHtml = ({ style, home }: { readonly style: string; readonly home: string }): string =>
  documentHtml({
    title: label('trust.trusted'),
    style: { href: style },
    mark: 'clampwright-page',
    children: (
      <>
        <header className="sheet-head">
          <h1>{label('trust.trusted')}</h1>
        </header>
        <main id="content">
          <p>{label('trust.trusted-text')}</p>
          <p className="action">
            <a href={home}>{label('trust.go-on')}</a>
          </p>
        </main>
      </>
    ),
  });
